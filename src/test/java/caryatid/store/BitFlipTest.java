package caryatid.store;

import static caryatid.demo.Invented.CODE;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Invented;
import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Flips one bit of a record at a time: it is found, its file is named, and what is shown is whole.
 */
class BitFlipTest {
  private static final int FLIPS = Integer.getInteger("flips", 2000);

  @TempDir private Path folder;
  private Store store;
  private Path object;
  private final Map<String, byte[]> kept = new HashMap<>();
  private List<Entry> entries;

  @BeforeEach
  void makeRecord() throws BadInput, StoreFailure {
    store = Invented.store(folder);
    object = folder.resolve("records").resolve(CODE.text());
    store.start(CODE, Invented.opening());
    store.add(CODE, Invented.stand(1, 30));
    store.add(CODE, Invented.note("comfortable"));
    store.add(CODE, Invented.stand(2, 30));
    StoredRecord record = store.open(CODE);
    entries = record.record().entries();
    for (Entry entry : entries) {
      for (KeptFile file : entry.files()) {
        kept.put(entry.folder() + "/" + file.name(), record.bytes(entry, file));
      }
    }
  }

  @Test
  void aFlippedBitInEveryFileIsFoundAndItsFileNamed() throws IOException, BadInput, StoreFailure {
    Random random = new Random(1);
    for (Path file : files()) {
      flip(file, random.nextLong(8 * Files.size(file)), file + ", seed 1");
    }
  }

  @Test
  @Tag("proof")
  void flippedBitsAnywhereAreFoundAndTheirFilesNamed() throws IOException, BadInput, StoreFailure {
    long seed = System.nanoTime();
    Random random = new Random(seed);
    List<Path> files = files();
    for (int i = 0; i < FLIPS; i++) {
      Path file = files.get(random.nextInt(files.size()));
      flip(file, random.nextLong(8 * Files.size(file)), file + ", seed " + seed + ", flip " + i);
    }
  }

  private void flip(Path file, long bit, String which) throws IOException, BadInput, StoreFailure {
    byte[] whole = Files.readAllBytes(file);
    byte[] hurt = whole.clone();
    hurt[(int) (bit / 8)] ^= (byte) (1 << bit % 8);
    Files.write(file, hurt);
    try {
      List<Problem> found = store.verify(CODE);
      String path = CODE.text() + "/" + object.relativize(file).toString().replace('\\', '/');
      assertThat(found).as(which + " bit " + bit).anyMatch(p -> names(p, path));
      assertThat(Files.readAllBytes(file)).as(which).isEqualTo(hurt);
      checkShown(which);
    } finally {
      Files.write(file, whole);
    }
  }

  /** Of an inventory and its sum file, which do not fit together, both are named. */
  private static boolean names(Problem problem, String path) {
    String file = problem.place().file();
    String folder = file.substring(0, file.lastIndexOf('/') + 1);
    return file.equals(path)
        || problem.arguments().stream()
            .anyMatch(a -> a instanceof Argument.Text t && path.equals(folder + t.value()));
  }

  private void checkShown(String which) throws BadInput, StoreFailure {
    StoredRecord record;
    try {
      record = store.open(CODE);
    } catch (BadInput e) {
      return;
    }
    assertThat(entries).as(which).containsAll(record.record().entries());
    for (Entry entry : record.record().entries()) {
      for (KeptFile file : entry.files()) {
        checkBytes(record, entry, file, which);
      }
    }
  }

  private void checkBytes(StoredRecord record, Entry entry, KeptFile file, String which) {
    try {
      assertThat(record.bytes(entry, file))
          .as(which)
          .isEqualTo(kept.get(entry.folder() + "/" + file.name()));
    } catch (BadInput refused) {
      assertThat(refused.problems()).as(which).isNotEmpty();
    }
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> found = Files.walk(object)) {
      return found.filter(Files::isRegularFile).sorted().toList();
    }
  }
}
