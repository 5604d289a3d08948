package caryatid.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
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

  @TempDir private Path folder;
  private Checkout checkout;
  private Start sound;
  private byte[] archive;

  @BeforeEach
  void startOnce() throws Exception {
    checkout = Whole.in(folder);
    Start.of(checkout, "--version");
    sound = check();
    assertThat(sound.exit()).isZero();
    assertThat(sound.out()).contains("\"state\"");
    assertThat(sound.err()).isEmpty();
    archive = Files.readAllBytes(checkout.target("start.jsa"));
  }

  /** The disk's flaw: neither size nor time of the file says anything. */
  @Test
  void flippedBitsChangeNoNumber() throws Exception {
    Random random = new Random(20261127);
    for (int i = 0; i < STARTS; i++) {
      byte[] bytes = archive.clone();
      // Every fourth in what comes before the classes: sizes, addresses, sums.
      int place = random.nextInt(i % 4 == 0 ? 8192 : bytes.length);
      bytes[place] ^= (byte) (1 << random.nextInt(8));
      put(bytes, true);
      assertThat(check()).as("flipped at %d", place).isEqualTo(sound);
      noCrash();
      put(archive, true);
      Files.deleteIfExists(checkout.target("start.jsa.refused"));
    }
  }

  @Test
  void zerosAndHalvesChangeNoNumber() throws Exception {
    for (int part = 0; part < 4; part++) {
      damaged(Arrays.copyOf(archive, archive.length * part / 4), true);
      byte[] zeroed = archive.clone();
      Arrays.fill(zeroed, zeroed.length * part / 4, zeroed.length * (part + 1) / 4, (byte) 0);
      damaged(zeroed, part % 2 == 0);
    }
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

  private void damaged(byte[] bytes, boolean sameTime) throws Exception {
    put(bytes, sameTime);
    assertThat(check()).isEqualTo(sound);
    assertThat(check()).isEqualTo(sound);
    assertThat(checkout.target("start.jsa")).hasSize(archive.length);
    noCrash();
  }

  private void put(byte[] bytes, boolean sameTime) throws IOException {
    Path file = checkout.target("start.jsa");
    FileTime time = Files.getLastModifiedTime(file);
    Files.delete(file);
    Files.write(file, bytes);
    if (sameTime) {
      Files.setLastModifiedTime(file, time);
    }
  }

  private Start check() throws IOException, InterruptedException {
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
