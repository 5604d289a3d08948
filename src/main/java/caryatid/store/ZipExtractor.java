package caryatid.store;

import caryatid.disk.FilePermissions;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Topic;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * Unpacks a zip into an empty folder without trusting it: all names are checked before the first
 * byte is written, and bytes are counted as they are read, whatever the directory says.
 */
final class ZipExtractor {
  /** Recordings shrink to a fifth or so; a hundredth is a bomb. */
  private static final long MOST_TIMES_LARGER = 100;

  private static final long ALWAYS_ALLOWED = 10_000_000;
  private static final int CHUNK = 1 << 16;

  private final Path zip;
  private final Path into;
  private long left;

  private ZipExtractor(Path zip, Path into) throws IOException {
    this.zip = zip;
    this.into = into;
    this.left = ALWAYS_ALLOWED + MOST_TIMES_LARGER * Files.size(zip);
  }

  /**
   * Unpacks.
   *
   * @param into an empty folder
   * @throws BadInput if the zip is damaged or could do harm
   * @throws IOException if the folder cannot be written
   */
  static void unpack(Path zip, Path into) throws BadInput, IOException {
    ZipExtractor extractor = new ZipExtractor(zip, into);
    extractor.checkNames();
    extractor.unpack();
  }

  private void checkNames() throws BadInput {
    Set<String> seen = new HashSet<>();
    for (ZipDirectory.ListedFile listed : directory()) {
      String name = listed.name();
      require(isSafe(name), BagItProblem.UNSAFE_NAME, name);
      require(listed.plain(), BagItProblem.LINK, name);
      require(!listed.encrypted(), BagItProblem.ENCRYPTED, name);
      require(seen.add(name.toLowerCase(Locale.ROOT)), BagItProblem.NAME_TWICE, name);
      left -= listed.size();
      require(left >= 0, BagItProblem.TOO_LARGE, name);
    }
    left += directory().stream().mapToLong(ZipDirectory.ListedFile::size).sum();
  }

  private List<ZipDirectory.ListedFile> directory() throws BadInput {
    try {
      return ZipDirectory.read(zip);
    } catch (IOException e) {
      throw bad(BagItProblem.NOT_A_ZIP, FailureReason.of(e));
    }
  }

  /** Names that mean the same file on every system, inside the folder. */
  private static boolean isSafe(String name) {
    return name.length() <= 300
        && name.matches("([A-Za-z0-9_=][A-Za-z0-9._=-]*/)*([A-Za-z0-9_=][A-Za-z0-9._=-]*)?")
        && !name.isEmpty()
        && !name.matches("(.*/)?[^/]*\\.(/.*)?");
  }

  private void unpack() throws BadInput, IOException {
    try (ZipFile file = new ZipFile(zip.toFile())) {
      for (ZipEntry entry : file.stream().toList()) {
        if (!entry.isDirectory()) {
          unpack(file, entry);
        }
      }
    } catch (ZipException e) {
      throw bad(BagItProblem.NOT_A_ZIP, FailureReason.of(e));
    }
  }

  private void unpack(ZipFile file, ZipEntry entry) throws BadInput, IOException {
    // Looked at again: the JDK might read another name from the same directory than we did.
    require(isSafe(entry.getName()), BagItProblem.UNSAFE_NAME, entry.getName());
    Path target = into.resolve(entry.getName());
    FilePermissions.createStoreFolder(target.getParent());
    try (InputStream from = file.getInputStream(entry);
        OutputStream to =
            Files.newOutputStream(target, java.nio.file.StandardOpenOption.CREATE_NEW)) {
      byte[] chunk = new byte[CHUNK];
      for (int n = from.read(chunk); n >= 0; n = from.read(chunk)) {
        left -= n;
        require(left >= 0, BagItProblem.TOO_LARGE, entry.getName());
        to.write(chunk, 0, n);
      }
    }
  }

  private void require(boolean holds, Topic fault, String name) throws BadInput {
    if (!holds) {
      throw bad(fault, name);
    }
  }

  private BadInput bad(Topic fault, String argument) {
    return new BadInput(
        Problem.at(Place.of(zip.toString()), fault, Argument.text(printable(argument))));
  }

  /** A hostile name must not reach a terminal as control characters. */
  private static String printable(String text) {
    return text.replaceAll("[^\\x20-\\x7e]", "?");
  }
}
