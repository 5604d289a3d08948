package caryatid.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.c3d.MadeC3d.Made;
import caryatid.recording.c3d.MadeStand;
import caryatid.recording.importer.Importer;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * C3D files with bytes changed, cut or doubled: each is read or refused by a {@code BadInput}; no
 * other exception, and memory that the file's length bounds.
 */
@Tag("proof")
class MotionFuzzProofTest {
  private static final int FILES = Integer.getInteger("motion", 20_000);

  @Test
  void spoiltFilesAreReadOrRefused() {
    Random random = new Random(21);
    byte[][] whole = new byte[12][];
    for (int type = 1; type <= 4; type++) {
      for (int i = 0; i < 3; i++) {
        whole[3 * (type - 1) + i] =
            new MadeStand(type, Made.values()[i], (type + i) % 2 == 0).file().bytes();
      }
    }
    int read = 0;
    for (int i = 0; i < FILES; i++) {
      byte[] file = spoilt(whole[random.nextInt(whole.length)].clone(), random);
      try {
        Recording recording = Importer.read(NamedBytes.of("a.c3d", file), Optional.empty());
        // Each sample has at least two bytes in the file for each of its channels.
        assertThat((long) recording.size() * 2).isLessThanOrEqualTo(file.length);
        read++;
      } catch (BadInput refused) {
        assertThat(refused.problems()).isNotEmpty();
      } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
        throw new AssertionError("file " + i, e);
      }
    }
    assertThat(read).as("read in spite of it").isBetween(FILES / 100, FILES);
  }

  private static byte[] spoilt(byte[] file, Random random) {
    int changes = 1 + random.nextInt(8);
    boolean head = random.nextInt(4) > 0;
    for (int i = 0; i < changes; i++) {
      int at = random.nextInt(head ? Math.min(file.length, 3072) : file.length);
      file[at] =
          (byte) (random.nextBoolean() ? random.nextInt(256) : file[at] ^ 1 << random.nextInt(8));
    }
    boolean cut = random.nextInt(20) == 0;
    return cut ? Arrays.copyOf(file, random.nextInt(file.length)) : file;
  }
}
