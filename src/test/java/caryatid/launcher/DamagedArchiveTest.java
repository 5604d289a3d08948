package caryatid.launcher;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Whatever becomes of the class archive, each start gives the right numbers. */
@Tag("proof")
@DisabledOnOs(OS.WINDOWS)
class DamagedArchiveTest {
  private static final int STARTS = Integer.getInteger("starts", 100);

  private final Random random = new Random(20261127);

  @TempDir private static Path folder;
  private static Checkout checkout;
  private static Start sound;
  private static byte[] archive;
  private static byte[] key;

  /** Once for all tests, because an archive takes seconds to make. */
  @BeforeAll
  static void startOnce() throws Exception {
    checkout = Whole.in(folder);
    Start.of(checkout, "--version");
    sound = check();
    assertThat(sound.exit()).isZero();
    assertThat(sound.out()).contains("\"state\"");
    assertThat(sound.err()).isEmpty();
    archive = Files.readAllBytes(checkout.target("start.jsa"));
    key = Files.readAllBytes(checkout.target("start.jsa.key"));
  }

  /** As it was after the first start, the key no older than its archive. */
  @BeforeEach
  void restore() throws Exception {
    Files.deleteIfExists(checkout.target("start.jsa.refused"));
    put(archive, false);
    Files.write(checkout.target("start.jsa.key"), key);
  }

  /** The disk's flaw: neither size nor time of the file says anything. */
  @Test
  void flippedBitsChangeNoNumber() throws Exception {
    for (int start = 0; start < STARTS; start++) {
      byte[] bytes = archive.clone();
      int place = place(start);
      bytes[place] ^= (byte) (1 << random.nextInt(8));
      unnoticed(bytes, "flipped at " + place);
    }
  }

  @Test
  void zerosChangeNoNumber() throws Exception {
    for (int start = 0; start < STARTS; start++) {
      byte[] bytes = archive.clone();
      int place = place(start);
      int end = Math.min(bytes.length, place + 1 + random.nextInt(1 << random.nextInt(24)));
      Arrays.fill(bytes, place, end, (byte) 0);
      unnoticed(bytes, "zeros from " + place + " to " + end);
    }
  }

  /** The size tells: the archive is made again at once, which takes seconds each time. */
  @Test
  void aCutChangesNoNumberAndIsMendedAtOnce() throws Exception {
    for (int start = 0; start < (STARTS + 3) / 4; start++) {
      int place = place(start);
      damaged(Arrays.copyOf(archive, place), start % 2 == 0, "cut at " + place);
    }
  }

  /** Quarters, or halves where starts are few: each takes an archive anew. */
  @Test
  void partsWithoutContentChangeNoNumber() throws Exception {
    int parts = STARTS < 4 ? 2 : 4;
    for (int part = 0; part < parts; part++) {
      byte[] zeroed = archive.clone();
      Arrays.fill(
          zeroed, zeroed.length * part / parts, zeroed.length * (part + 1) / parts, (byte) 0);
      damaged(zeroed, part % 2 == 0, "part " + part);
    }
  }

  /** Every fourth in what comes before the classes: sizes, addresses, sums. */
  private int place(int start) {
    return random.nextInt(start % 4 == 0 ? 8192 : archive.length);
  }

  private void unnoticed(byte[] bytes, String how) throws Exception {
    put(bytes, true);
    assertThat(check()).as(how).isEqualTo(sound);
    noCrash();
    put(archive, true);
    Files.deleteIfExists(checkout.target("start.jsa.refused"));
  }

  @Test
  void anArchiveThatJavaRefusesIsMadeAgainAtTheNextStart() throws Exception {
    byte[] bytes = archive.clone();
    bytes[bytes.length / 2] ^= 1;
    put(bytes, true);
    check();
    assertThat(checkout.target("start.jsa.refused")).exists();
    assertThat(check()).isEqualTo(sound);
    assertThat(checkout.target("start.jsa.refused")).doesNotExist();
    assertThat(Arrays.equals(Files.readAllBytes(checkout.target("start.jsa")), bytes)).isFalse();
    check();
    assertThat(checkout.target("start.jsa.refused")).doesNotExist();
  }

  private void damaged(byte[] bytes, boolean sameTime, String how) throws Exception {
    put(bytes, sameTime);
    assertThat(check()).as(how).isEqualTo(sound);
    assertThat(check()).as(how).isEqualTo(sound);
    // Java lays out an archive a page longer or shorter from one making to the next.
    byte[] now = Files.readAllBytes(checkout.target("start.jsa"));
    assertThat(Arrays.equals(now, bytes)).as(how).isFalse();
    assertThat(now.length).as(how).isCloseTo(archive.length, withinPercentage(1));
    noCrash();
  }

  private static void put(byte[] bytes, boolean sameTime) throws IOException {
    Path file = checkout.target("start.jsa");
    FileTime time = Files.getLastModifiedTime(file);
    Files.delete(file);
    Files.write(file, bytes);
    if (sameTime) {
      Files.setLastModifiedTime(file, time);
    }
  }

  private static Start check() throws IOException, InterruptedException {
    String sample = checkout.home().resolve("sample-recordings/k7").toString();
    return Start.of(
        checkout,
        "check",
        sample + "/barefoot-1.csv",
        "--trial",
        sample + "/barefoot.yaml",
        "--plate",
        sample + "/plate.yaml",
        "--json");
  }

  private void noCrash() throws IOException {
    for (Path place : new Path[] {checkout.tools(), checkout.target(".caryatid/crashes")}) {
      try (Stream<Path> files = Files.list(place)) {
        assertThat(files.map(f -> f.getFileName().toString()))
            .noneMatch(name -> name.startsWith("hs_err") || name.startsWith("crash"));
      }
    }
  }
}
