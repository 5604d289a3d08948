package caryatid.store;

import caryatid.disk.DurableFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finishes or undoes an addition that was interrupted.
 *
 * <p>An addition moves the complete version folder into its place, then replaces the record's
 * inventory, then its sum file, each in one step. Whatever the moment of a kill, what is found is
 * one of the few states below; anything else is damage, which is left as it is for {@code verify}
 * to name.
 */
final class CrashRecovery {
  private static final String DECLARATION = "0=ocfl_object_";

  private final Path object;
  private final Path replacing;
  private final int newest;

  private CrashRecovery(Path object, Path replacing, int newest) {
    this.object = object;
    this.replacing = replacing;
    this.newest = newest;
  }

  /**
   * Finishes or undoes what was interrupted; the lock of the record must be held.
   *
   * @throws IOException if its folder cannot be read or written
   */
  static void recover(Path object, Path replacing) throws IOException {
    if (!Files.isDirectory(object)) {
      return;
    }
    CrashRecovery recovery = new CrashRecovery(object, replacing, newest(object));
    if (recovery.newest == 0) {
      recovery.takeBackStart();
    } else if (recovery.isMovedButNotListed() || recovery.isListedButNotMoved()) {
      recovery.listNewest();
    }
  }

  private static int newest(Path object) throws IOException {
    try (Stream<Path> children = Files.list(object)) {
      return children
          .map(child -> child.getFileName().toString())
          .filter(name -> name.matches("v[1-9]\\d{0,6}"))
          .mapToInt(name -> Integer.parseInt(name.substring(1)))
          .max()
          .orElse(0);
    }
  }

  /** A record of which only the declaration was written. */
  private void takeBackStart() throws IOException {
    List<Path> children;
    try (Stream<Path> found = Files.list(object)) {
      children = found.toList();
    }
    if (children.stream().allMatch(c -> c.getFileName().toString().startsWith(DECLARATION))) {
      DurableFiles.delete(object);
    }
  }

  /** The newest version's folder is in place, the record's inventory or sum file is still older. */
  private boolean isMovedButNotListed() throws IOException {
    Optional<byte[]> sum = bytes("", ObjectFiles.SUM);
    boolean older =
        newest == 1 ? sum.isEmpty() : same(sum, bytes(folder(newest - 1), ObjectFiles.SUM));
    return older
        && !same(sum, bytes(folder(newest), ObjectFiles.SUM))
        && (isInventoryOf(newest) || (newest == 1 ? isNoInventory() : isInventoryOf(newest - 1)));
  }

  /** An addition failed after the inventory was replaced, and its folder was taken away again. */
  private boolean isListedButNotMoved() throws IOException {
    Optional<byte[]> inventory = bytes("", ObjectFiles.INVENTORY);
    if (inventory.isEmpty()
        || isInventoryOf(newest)
        || !same(bytes("", ObjectFiles.SUM), bytes(folder(newest), ObjectFiles.SUM))) {
      return false;
    }
    try {
      Inventory read = Inventory.parse(inventory.get());
      return read.head() == newest + 1 && read.versions() == newest + 1;
    } catch (IOException e) {
      return false;
    }
  }

  private void listNewest() throws IOException {
    byte[] inventory = bytes(folder(newest), ObjectFiles.INVENTORY).orElse(new byte[0]);
    byte[] sum = bytes(folder(newest), ObjectFiles.SUM).orElse(new byte[0]);
    if (new String(sum, java.nio.charset.StandardCharsets.ISO_8859_1)
        .startsWith(Digests.of(Digests.SHA_512, inventory))) {
      DurableFiles.replace(object.resolve(ObjectFiles.INVENTORY), inventory, replacing);
      DurableFiles.replace(object.resolve(ObjectFiles.SUM), sum, replacing);
    }
  }

  private boolean isNoInventory() throws IOException {
    return bytes("", ObjectFiles.INVENTORY).isEmpty();
  }

  private boolean isInventoryOf(int version) throws IOException {
    return same(bytes("", ObjectFiles.INVENTORY), bytes(folder(version), ObjectFiles.INVENTORY));
  }

  private static String folder(int version) {
    return "v" + version;
  }

  private Optional<byte[]> bytes(String folder, String name) throws IOException {
    Path file = object.resolve(folder).resolve(name);
    return Files.isRegularFile(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
  }

  private static boolean same(Optional<byte[]> a, Optional<byte[]> b) {
    return a.isPresent() && b.isPresent() && Arrays.equals(a.get(), b.get());
  }
}
