package caryatid.store;

import caryatid.fitting.RecordCode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Words that stand in one record alone, sought in every file. */
final class Marker {
  private Marker() {}

  static String of(RecordCode code) {
    return "marker of " + code.text() + " here";
  }

  /** Where the records of a folder are packed to. */
  static Path packed(Path clinic) {
    return clinic.resolveSibling(clinic.getFileName() + "-packed");
  }

  /** Where they are taken in again. */
  static Path unpacked(Path clinic) {
    return clinic.resolveSibling(clinic.getFileName() + "-unpacked");
  }

  /**
   * The files of a folder, and of what this program or a killed one left among the temporary files,
   * that hold it. Other programs may run at the same time, and sweep what was left.
   */
  static List<Path> in(Path folder, RecordCode code) throws IOException {
    byte[] sought = of(code).getBytes(StandardCharsets.UTF_8);
    Path temporary = Path.of(System.getProperty("java.io.tmpdir"));
    try (Stream<Path> left = Files.list(temporary)) {
      List<Path> folders =
          Stream.concat(Stream.of(folder), left.filter(f -> isOurs(f.getFileName().toString())))
              .toList();
      return folders.stream()
          .flatMap(f -> files(f).stream())
          .filter(f -> holds(f, sought))
          .toList();
    }
  }

  private static boolean isOurs(String name) {
    return name.startsWith(Leftovers.TRIED_OUT + ProcessHandle.current().pid() + "-")
        || Leftovers.isTriedOutAndLeft(name);
  }

  /** The files of a folder that others than owner and group can reach, and read or write. */
  static List<Path> openToOthers(Path folder) {
    return files(folder).stream().filter(f -> isOpen(f) && isReached(f, folder)).toList();
  }

  private static List<Path> files(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).toList();
    } catch (UncheckedIOException e) {
      if (e.getCause() instanceof NoSuchFileException) {
        return files(folder);
      }
      throw e;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static boolean isOpen(Path file) {
    Set<PosixFilePermission> rights = rights(file);
    return rights.contains(PosixFilePermission.OTHERS_READ)
        || rights.contains(PosixFilePermission.OTHERS_WRITE);
  }

  private static boolean isReached(Path file, Path folder) {
    return Stream.iterate(file.getParent(), f -> f.startsWith(folder), Path::getParent)
        .allMatch(f -> rights(f).contains(PosixFilePermission.OTHERS_EXECUTE));
  }

  private static Set<PosixFilePermission> rights(Path file) {
    try {
      return Files.getPosixFilePermissions(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static boolean holds(Path file, byte[] sought) {
    try {
      String text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
      return text.contains(new String(sought, StandardCharsets.ISO_8859_1));
    } catch (NoSuchFileException swept) {
      return false;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
