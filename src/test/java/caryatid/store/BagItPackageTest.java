package caryatid.store;

import static caryatid.demo.Invented.CODE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.demo.Invented;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.wording.Wording;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BagItPackageTest {
  private static final List<String> READ_ME = List.of("Take care.", "Vorsicht: Träger.");
  private static final BesideRecord BESIDE = new BesideRecord(READ_ME, Optional.empty());

  @TempDir private Path folder;
  private Store store;
  private Store other;
  private Path zip;

  @BeforeEach
  void pack() throws BadInput, StoreFailure {
    store = Invented.store(folder.resolve("clinic"));
    other = Invented.store(folder.resolve("other"));
    store.start(CODE, Invented.opening());
    store.add(CODE, Invented.stand(1, 50));
    store.add(CODE, Invented.stand(2, 50));
    zip = folder.resolve("K7.zip");
    store.pack(CODE, zip, BESIDE);
  }

  @Test
  void exportImportExportIsIdentical() throws BadInput, StoreFailure, IOException {
    assertThat(other.unpack(zip, "CD")).isEqualTo(CODE);
    Path again = folder.resolve("again.zip");
    other.pack(CODE, again, BESIDE);
    assertThat(again).hasSameBinaryContentAs(zip);
    assertThat(other.read(CODE).headDigest()).isEqualTo(store.read(CODE).headDigest());
    assertThat(other.add(CODE, Invented.note("goes on")).number()).isEqualTo(4);
  }

  /**
   * Validation: RFC 8493, sections 2.1.1 to 2.1.3 and 2.2.1 (tag files, manifests), by JDK digests.
   */
  @Test
  void theZipIsABagAsTheStandardHasIt() throws Exception {
    Map<String, byte[]> files = files();
    assertThat(text(files, "bagit.txt"))
        .isEqualTo("BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n");
    MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
    List<String> listed = new ArrayList<>();
    for (String line : text(files, "manifest-sha256.txt").lines().toList()) {
      String path = line.substring(66);
      assertThat(line)
          .startsWith(HexFormat.of().formatHex(sha256.digest(files.get(path))) + "  data/");
      listed.add(path);
    }
    assertThat(listed)
        .containsExactlyInAnyOrderElementsOf(
            files.keySet().stream().filter(f -> f.startsWith("data/")).toList());
    long octets = listed.stream().mapToLong(f -> files.get(f).length).sum();
    assertThat(text(files, "bag-info.txt"))
        .contains("Payload-Oxum: " + octets + "." + listed.size() + "\n");
  }

  @Test
  void whatPeopleReadFirstIsUnderTheSumsOfTheTagManifest() throws Exception {
    Map<String, byte[]> files = files();
    assertThat(text(files, "read-me.txt")).isEqualTo("Take care.\nVorsicht: Träger.\n");
    MessageDigest sha512 = MessageDigest.getInstance("SHA-512");
    assertThat(text(files, "tagmanifest-sha512.txt"))
        .contains(
            HexFormat.of().formatHex(sha512.digest(files.get("read-me.txt"))) + "  read-me.txt\n");
  }

  @Test
  void aRecordThatIsThereIsNotReplaced() {
    assertRefused(
        store,
        zip,
        "K7-right: there is already a record with that code. Add to it, or choose another code.");
  }

  @Test
  void aZipThatIsRefusedLeavesNoStoreBehind() throws IOException {
    Map<String, byte[]> files = rooted();
    files.put("../evil.txt", new byte[] {1});
    Path hostile = write(files);
    Store none = Invented.store(folder.resolve("none"));
    assertThatThrownBy(() -> none.unpack(hostile, "CD")).isInstanceOf(BadInput.class);
    assertThat(folder.resolve("none")).doesNotExist();
  }

  @Test
  void aPathOutOfTheFolderIsRefused() throws IOException {
    for (String name :
        List.of(
            "../evil.txt",
            "K7-right/../../evil.txt",
            "/etc/evil",
            "C:/evil",
            "a\\..\\evil",
            "con./x")) {
      Map<String, byte[]> files = rooted();
      files.put(name, new byte[] {1});
      assertRefused(
          write(files),
          ": holds a file whose name is not safe on every system: "
              + name
              + ". Nothing was unpacked.");
    }
  }

  @Test
  void aLinkIsRefused() throws IOException {
    Map<String, byte[]> files = rooted();
    files.put("K7-right/link", "/etc/passwd".getBytes(StandardCharsets.UTF_8));
    Path hostile = write(files);
    byte[] bytes = Files.readAllBytes(hostile);
    // Unix mode of a symbolic link, in the upper half of the external attributes (APPNOTE 4.4.15).
    int at = lastIndexOf(bytes, "K7-right/link") - 46 + 38;
    bytes[at + 2] = (byte) 0xff;
    bytes[at + 3] = (byte) 0xa1;
    Files.write(hostile, bytes);
    assertRefused(
        hostile,
        ": holds a link or a device instead of a file: K7-right/link. Nothing was unpacked.");
  }

  @Test
  void aBombIsRefusedWhateverItsDirectorySays() throws IOException {
    Map<String, byte[]> files = rooted();
    files.put("K7-right/data/K7-right/zeros", new byte[40_000_000]);
    Path hostile = write(files);
    String said =
        ": unpacks to far more than a record holds, at K7-right/data/K7-right/zeros. Nothing was"
            + " unpacked.";
    assertRefused(hostile, said);
    byte[] bytes = Files.readAllBytes(hostile);
    int at = lastIndexOf(bytes, "K7-right/data/K7-right/zeros") - 46 + 24;
    Arrays.fill(bytes, at, at + 4, (byte) 0);
    Files.write(hostile, bytes);
    assertThat(refused(other, hostile)).contains("Nothing was unpacked").doesNotContain("null");
  }

  @Test
  void twoFilesOfOneNameAreRefused() throws IOException {
    Map<String, byte[]> files = rooted();
    files.put("k7-RIGHT/bagit.txt", new byte[] {1});
    assertRefused(
        write(files),
        ": holds two files with the same name: k7-RIGHT/bagit.txt. Nothing was unpacked.");
    Map<String, byte[]> same = rooted();
    same.put("K7-right/bagit.tx_", new byte[] {1});
    Path hostile = write(same);
    byte[] bytes = Files.readAllBytes(hostile);
    for (int at = indexOf(bytes, "bagit.tx_", 0); at >= 0; at = indexOf(bytes, "bagit.tx_", at)) {
      bytes[at + 8] = 't';
    }
    Files.write(hostile, bytes);
    assertRefused(
        hostile, ": holds two files with the same name: K7-right/bagit.txt. Nothing was unpacked.");
  }

  @Test
  void wrongMissingAndUnlistedFilesAreRefused() throws IOException {
    String recording = "data/K7-right/v2/content/0002-stand/recording-walk.csv";
    Map<String, byte[]> changed = rooted();
    changed.get("K7-right/" + recording)[0] ^= 1;
    assertThat(refused(other, write(changed)))
        .contains(": " + recording + " is not what manifest-sha")
        .endsWith(".txt says: its bytes have changed. Nothing was unpacked.");
    Map<String, byte[]> missing = rooted();
    missing.remove("K7-right/" + recording);
    assertThat(refused(other, write(missing)))
        .contains(": " + recording + " is listed in manifest-sha");
    Map<String, byte[]> more = rooted();
    more.put("K7-right/data/K7-right/more.txt", new byte[] {1});
    assertThat(refused(other, write(more)))
        .contains(": data/K7-right/more.txt is not listed in manifest-sha");
  }

  @Test
  void aBagWithRightSumsAroundADamagedRecordIsRefused() throws Exception {
    Path object = folder.resolve("clinic/records/K7-right");
    Path recording = object.resolve("v2/content/0002-stand/recording-walk.csv");
    Files.writeString(recording, "something else");
    Path damaged = folder.resolve("damaged.zip");
    BagItPackage.pack(object, CODE, Invented.AT, BESIDE, damaged);
    assertRefused(
        damaged,
        ": the record in it is damaged, at K7-right/v2/content/0002-stand/recording-walk.csv."
            + " Nothing was unpacked.");
  }

  @Test
  void anythingElseIsRefused() throws IOException {
    Path text = Files.writeString(folder.resolve("text.zip"), "no zip at all");
    assertRefused(
        text, ": expected a zip, found something else or a damaged one: no end of a directory.");
    Path half = folder.resolve("half.zip");
    Files.write(half, Arrays.copyOf(Files.readAllBytes(zip), (int) Files.size(zip) / 2));
    assertThat(refused(other, half)).contains("expected a zip, found something else");
    Map<String, byte[]> fetch = rooted();
    fetch.put("K7-right/fetch.txt", new byte[] {1});
    assertRefused(
        write(fetch),
        ": refers to remote files (fetch.txt), which is not supported. Nothing was unpacked.");
  }

  private Map<String, byte[]> files() throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    rooted().forEach((name, bytes) -> files.put(name.substring("K7-right/".length()), bytes));
    return files;
  }

  private Map<String, byte[]> rooted() throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    try (ZipInputStream in =
        new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(zip)))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        files.put(entry.getName(), in.readAllBytes());
      }
    }
    return files;
  }

  private Path write(Map<String, byte[]> files) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        out.putNextEntry(new ZipEntry(file.getKey()));
        out.write(file.getValue());
      }
    }
    return Files.write(folder.resolve("hostile.zip"), bytes.toByteArray());
  }

  private void assertRefused(Path hostile, String sentence) {
    assertRefused(other, hostile, hostile + sentence);
  }

  private void assertRefused(Store into, Path hostile, String sentence) {
    assertThat(refused(into, hostile)).isEqualTo(sentence);
  }

  /** What is said; also checks that nothing was written beside the store's own empty folders. */
  private String refused(Store into, Path hostile) {
    try {
      into.unpack(hostile, "CD");
      throw new AssertionError("taken in");
    } catch (StoreFailure e) {
      throw new AssertionError(e);
    } catch (BadInput e) {
      assertNothingLeft();
      return Wording.in(Locale.ENGLISH).say(e.problems().get(0));
    }
  }

  private void assertNothingLeft() {
    Path records = folder.resolve("other/records");
    Path importing = folder.resolve("other").resolve("work").resolve("importing");
    try (Stream<Path> found = Files.exists(records) ? Files.list(records) : Stream.empty()) {
      assertThat(found.filter(Files::isDirectory)).isEmpty();
      assertThat(importing).doesNotExist();
      assertThat(folder.resolve("evil.txt")).doesNotExist();
      assertThat(folder.resolve("other/evil.txt")).doesNotExist();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static String text(Map<String, byte[]> files, String name) {
    return new String(files.get(name), StandardCharsets.UTF_8);
  }

  private static int lastIndexOf(byte[] bytes, String text) {
    int last = -1;
    for (int at = indexOf(bytes, text, 0); at >= 0; at = indexOf(bytes, text, at + 1)) {
      last = at;
    }
    return last;
  }

  private static int indexOf(byte[] bytes, String text, int from) {
    return new String(bytes, StandardCharsets.ISO_8859_1).indexOf(text, from);
  }
}
