package caryatid.fuzz;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.c3d.MadeC3d.Made;
import caryatid.recording.c3d.MadeStand;
import caryatid.recording.importer.Importer;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * C3D files with bytes changed, cut or doubled. Each is refused by a {@code BadInput}, remarked, or
 * read with the same numbers, but for what a changed number explains: a sample of its plate, or a
 * calibration that stands in the file once. No other exception, and memory that the file's length
 * bounds.
 */
@Tag("proof")
class MotionFuzzProofTest {
  private static final int FILES = Integer.getInteger("motion", 20_000);

  /** Header and parameters may differ by as much without a remark. */
  private static final double SAME_RATE = 0.001;

  /** Numbers and words that nothing else in a file repeats. */
  private static final List<String> ONLY_ONCE =
      List.of(
          "GEN_SCALE",
          "SCALE",
          "OFFSET",
          "FORMAT",
          "UNITS",
          "CORNERS",
          "ORIGIN",
          "CHANNEL",
          "CAL_MATRIX",
          "TYPE",
          "USED",
          "ZERO");

  /** A file as it was made, and what is read of it. */
  private record Whole(byte[] file, Recording read, int data, int perFrame, BitSet onlyOnce) {}

  private static Whole whole(int type, Made processor, boolean real) throws BadInput {
    byte[] file = new MadeStand(type, processor, real).file().bytes();
    int data = 512 * (1 + (file[2 * 256 + 2] & 0xff));
    int channels = type == 3 ? 16 : 12;
    int bytes = (8 * 4 + channels * MadeStand.PER_FRAME) * (real ? 4 : 2);
    return new Whole(file, read(file), data, bytes, onlyOnce(file, data));
  }

  private static Recording read(byte[] file) throws BadInput {
    return Importer.read(NamedBytes.of("a.c3d", file), Optional.empty());
  }

  /** The bytes of those parameters: name, type, dimensions and values. */
  private static BitSet onlyOnce(byte[] file, int data) {
    String text = new String(file, 0, data, ISO_8859_1);
    BitSet bytes = new BitSet();
    for (String name : ONLY_ONCE) {
      for (int at = text.indexOf(name, 512); at >= 0; at = text.indexOf(name, at + 1)) {
        int from = at + name.length() + 2;
        int count = Math.abs(file[from]);
        int directions = file[from + 1];
        for (int i = 0; i < directions && directions <= 3; i++) {
          count *= file[from + 2 + i] & 0xff;
        }
        bytes.set(at, from + 2 + directions + count);
      }
    }
    return bytes;
  }

  @Test
  void spoiltFilesAreReadAlikeOrRefused() throws BadInput {
    Random random = new Random(21);
    List<Whole> all = new ArrayList<>();
    for (int type = 1; type <= 4; type++) {
      for (int i = 0; i < 3; i++) {
        all.add(whole(type, Made.values()[i], (type + i) % 2 == 0));
      }
    }
    int read = 0;
    for (int i = 0; i < FILES; i++) {
      Whole whole = all.get(random.nextInt(all.size()));
      byte[] file = spoilt(whole.file().clone(), random);
      try {
        Recording recording = read(file);
        // Each sample has at least two bytes in the file for each of its channels.
        assertThat((long) recording.size() * 2).isLessThanOrEqualTo(file.length);
        assertThat(explained(whole, file, recording))
            .as("file " + i + changes(whole, file))
            .isTrue();
        read++;
      } catch (BadInput refused) {
        assertThat(refused.problems()).isNotEmpty();
      } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
        throw new AssertionError("file " + i, e);
      }
    }
    assertThat(read).as("read in spite of it").isBetween(FILES / 100, FILES);
  }

  private static List<Integer> changed(Whole whole, byte[] file) {
    List<Integer> changed = new ArrayList<>();
    for (int at = 0; at < file.length; at++) {
      if (file[at] != whole.file()[at]) {
        changed.add(at);
      }
    }
    return changed;
  }

  private static String changes(Whole whole, byte[] file) {
    StringBuilder all = new StringBuilder();
    for (int at : changed(whole, file)) {
      String near = new String(whole.file(), Math.max(0, at - 24), 32, ISO_8859_1);
      all.append(" at ").append(at).append(" [").append(near.replaceAll("\\W", ".")).append("]");
    }
    return all.toString();
  }

  /** Whether what is read is the same, remarked, or differs as the changed bytes have it. */
  private static boolean explained(Whole whole, byte[] file, Recording recording) {
    List<Integer> changed = changed(whole, file);
    Set<Topic> remarks = new HashSet<>(topics(recording));
    remarks.removeAll(topics(whole.read()));
    if (!remarks.isEmpty() || changed.stream().anyMatch(whole.onlyOnce()::get)) {
      return true;
    }
    boolean alike =
        recording.size() == whole.read().size()
            && Math.abs(recording.rateHz() / whole.read().rateHz() - 1) <= SAME_RATE
            && recording.plates().size() == whole.read().plates().size();
    BitSet touched = new BitSet();
    changed.stream()
        .filter(at -> at >= whole.data())
        .map(at -> (at - whole.data()) / whole.perFrame() * MadeStand.PER_FRAME)
        .forEach(sample -> touched.set(sample, sample + MadeStand.PER_FRAME));
    return alike && sameNumbers(whole.read(), recording, touched);
  }

  private static List<Topic> topics(Recording recording) {
    return recording.remarks().stream().map(Remark::topic).toList();
  }

  /** All numbers of all plates, but for the samples of frames in which a byte was changed. */
  private static boolean sameNumbers(Recording one, Recording other, BitSet touched) {
    for (int plate = 0; plate < one.plates().size(); plate++) {
      PlateTrack a = one.plates().get(plate);
      PlateTrack b = other.plates().get(plate);
      for (int i = touched.nextClearBit(0); i < one.size(); i = touched.nextClearBit(i + 1)) {
        if (!numbers(a, i).equals(numbers(b, i))) {
          return false;
        }
      }
    }
    return true;
  }

  private static List<Double> numbers(PlateTrack track, int at) {
    return List.of(
        track.copAnteriorMm().at(at),
        track.copRightMm().orElseThrow().at(at),
        track.upN().orElseThrow().at(at));
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
