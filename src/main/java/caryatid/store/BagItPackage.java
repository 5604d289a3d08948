package caryatid.store;

import caryatid.disk.DurableFiles;
import caryatid.fitting.RecordCode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A record packed as a bag (BagIt, RFC 8493) in a zip: its folder as it is, with sums that {@code
 * sha256sum -c manifest-sha256.txt} checks as well. The same record gives the same bytes.
 */
final class BagItPackage {
  static final String DECLARATION = "bagit.txt";
  static final String DECLARED = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";
  static final String INFO = "bag-info.txt";
  static final String PAYLOAD = "data/";

  /** What people read first; a tag file, so that it is under the tag manifest's sums. */
  static final String READ_ME = "read-me.txt";

  /** The record's report, where one is packed with it; a tag file as well. */
  static final String REPORT = "report.pdf";

  /** The manifests' names and the algorithms they list. */
  static final Map<String, String> MANIFESTS =
      Map.of(
          "manifest-sha256.txt", Digests.SHA_256,
          "manifest-sha512.txt", Digests.SHA_512);

  /** The manifest of the files about the bag itself. */
  static final String TAG_MANIFEST = "tagmanifest-sha512.txt";

  private final Path object;
  private final RecordCode code;
  private final LocalDateTime at;
  private final BesideRecord beside;

  private BagItPackage(Path object, RecordCode code, OffsetDateTime at, BesideRecord beside) {
    this.object = object;
    this.code = code;
    this.at = at.withOffsetSameInstant(ZoneOffset.UTC).toLocalDateTime();
    this.beside = beside;
  }

  /**
   * Packs a record.
   *
   * @param object its folder
   * @param at the time that files in the zip carry: when the record was last added to
   * @param beside what is packed for people
   * @param zip the file to be made; nothing is left of it if packing fails
   */
  static void pack(Path object, RecordCode code, OffsetDateTime at, BesideRecord beside, Path zip)
      throws IOException {
    BagItPackage made = new BagItPackage(object, code, at, beside);
    DurableFiles.write(zip, made::pack, false);
  }

  private void pack(OutputStream out) throws IOException {
    Map<String, Path> payload = payload();
    Map<String, byte[]> tags = new TreeMap<>();
    tags.put(DECLARATION, utf8(DECLARED));
    tags.put(INFO, utf8(info(payload.values())));
    tags.put(READ_ME, utf8(String.join("\n", beside.readMe()) + "\n"));
    if (beside.report().isPresent()) {
      try (InputStream report = beside.report().get().open()) {
        tags.put(REPORT, report.readAllBytes());
      }
    }
    for (Map.Entry<String, String> manifest : MANIFESTS.entrySet()) {
      tags.put(manifest.getKey(), utf8(manifest(payload, manifest.getValue())));
    }
    tags.put(TAG_MANIFEST, utf8(tagManifest(tags)));
    ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
    for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
      put(zip, tag.getKey(), new ByteArrayInputStream(tag.getValue()));
    }
    for (Map.Entry<String, Path> file : payload.entrySet()) {
      try (InputStream bytes = Files.newInputStream(file.getValue())) {
        put(zip, file.getKey(), bytes);
      }
    }
    zip.finish();
  }

  private Map<String, Path> payload() throws IOException {
    Map<String, Path> payload = new TreeMap<>();
    try (Stream<Path> files = Files.walk(object)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String path = object.relativize(file).toString().replace('\\', '/');
        payload.put(PAYLOAD + code.text() + "/" + path, file);
      }
    }
    return payload;
  }

  private String info(Iterable<Path> payload) throws IOException {
    long octets = 0;
    long streams = 0;
    for (Path file : payload) {
      octets += Files.size(file);
      streams++;
    }
    return "External-Identifier: "
        + code.text()
        + "\nBagging-Date: "
        + at.toLocalDate()
        + "\nPayload-Oxum: "
        + octets
        + "."
        + streams
        + "\n";
  }

  private static String manifest(Map<String, Path> payload, String algorithm) throws IOException {
    StringBuilder lines = new StringBuilder();
    for (Map.Entry<String, Path> file : payload.entrySet()) {
      try (InputStream bytes = Files.newInputStream(file.getValue())) {
        lines.append(line(Digests.of(algorithm, bytes), file.getKey()));
      }
    }
    return lines.toString();
  }

  private static String tagManifest(Map<String, byte[]> tags) {
    StringBuilder lines = new StringBuilder();
    tags.forEach((name, bytes) -> lines.append(line(Digests.of(Digests.SHA_512, bytes), name)));
    return lines.toString();
  }

  private static String line(String sum, String path) {
    return sum + "  " + path + "\n";
  }

  private void put(ZipOutputStream zip, String path, InputStream bytes) throws IOException {
    ZipEntry entry = new ZipEntry(code.text() + "/" + path);
    entry.setTimeLocal(at);
    zip.putNextEntry(entry);
    bytes.transferTo(zip);
    zip.closeEntry();
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** All files a bag must have about itself. */
  static List<String> tagFiles() {
    return Stream.concat(
            Stream.of(DECLARATION, INFO, TAG_MANIFEST), MANIFESTS.keySet().stream().sorted())
        .toList();
  }
}
