package caryatid.recording.workbook;

import caryatid.recording.model.ImportProblem;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** The parts of a workbook's zip, by name. Nothing is unpacked to the disk. */
final class WorkbookZip {
  /** Small parts that are kept may be as large together, bytes. */
  private static final int MOST_KEPT = 64 << 20;

  private final byte[] content;
  private final Map<String, byte[]> kept = new HashMap<>();
  private final Set<String> names = new HashSet<>();

  /**
   * Reads the names and keeps what tells about the sheets.
   *
   * @param content the whole file
   */
  WorkbookZip(byte[] content) throws IOException {
    this.content = content;
    int left = MOST_KEPT;
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(content))) {
      InputStream bounded = BoundedPart.of(zip, content.length);
      for (ZipEntry part = next(zip); part != null; part = next(zip)) {
        if (!names.add(key(part.getName()))) {
          throw WorkbookFault.damaged(part.getName());
        }
        if (isSmall(key(part.getName()))) {
          byte[] bytes = bounded.readNBytes(left + 1);
          left -= bytes.length;
          kept.put(key(part.getName()), bytes);
        } else {
          bounded.transferTo(OutputStream.nullOutputStream());
        }
        if (left < 0) {
          throw new WorkbookFault(ImportProblem.WORKBOOK_LARGE);
        }
      }
    }
  }

  private static ZipEntry next(ZipInputStream zip) throws IOException {
    try {
      return zip.getNextEntry();
    } catch (IllegalArgumentException e) {
      throw new IOException("a name that is no text", e);
    }
  }

  private static boolean isSmall(String key) {
    return key.endsWith(".rels") || (key.endsWith(".xml") && !key.contains("/worksheets/"));
  }

  /** Names of parts do not differ by case. */
  private static String key(String name) {
    String forward = name.replace('\\', '/');
    return (forward.startsWith("/") ? forward.substring(1) : forward).toLowerCase(Locale.ROOT);
  }

  boolean has(String name) {
    return names.contains(key(name));
  }

  /** A part's bytes; the caller closes the stream. */
  InputStream open(String name) throws IOException {
    byte[] bytes = kept.get(key(name));
    if (bytes != null) {
      return new ByteArrayInputStream(bytes);
    }
    ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(content));
    for (ZipEntry part = next(zip); part != null; part = next(zip)) {
      if (key(part.getName()).equals(key(name))) {
        return BoundedPart.of(zip, content.length);
      }
    }
    throw WorkbookFault.damaged(name);
  }
}
