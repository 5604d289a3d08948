package caryatid.store;

import static caryatid.demo.Invented.CODE;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Invented;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.form.Answers;
import caryatid.entry.form.AnswersToContent;
import caryatid.fitting.Addition;
import caryatid.fitting.FittingRecord;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.remark.Topic;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Lets every write, sync, move and delete of the store fail in its turn, once or from then on, and
 * looks afterwards, with a disk that works again, at what is there.
 */
class FailureTest {
  @TempDir private Path folder;
  private final Faults faults = new Faults();

  /** What an attempt ended in. */
  private enum End {
    DONE,
    REFUSED,
    WRITTEN_BUT
  }

  private interface Attempt {
    void run(Store store) throws BadInput, StoreFailure;
  }

  @Test
  void anAdditionThatFailsLeavesTheRecordAsItWas() throws BadInput, StoreFailure {
    failAtEveryStep(
        true, FailureTest::started, s -> s.add(CODE, Invented.stand(1, 5)), this::added);
  }

  @Test
  @Tag("proof")
  void soDoesOneWhoseDiskGoesOnFailing() throws BadInput, StoreFailure {
    failAtEveryStep(
        false, FailureTest::started, s -> s.add(CODE, Invented.stand(1, 5)), this::added);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  @Tag("proof")
  void aStartThatFailsLeavesNoRecord(boolean once) throws BadInput, StoreFailure {
    failAtEveryStep(once, s -> {}, FailureTest::started, this::startedOrNot);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  @Tag("proof")
  void anErasureThatFailsIsNotBegunOrIsFinishedByTheNextOne(boolean once)
      throws BadInput, StoreFailure {
    failAtEveryStep(
        once,
        FailureTest::started,
        s -> s.erase(CODE, Invented.AT, "AB", "on request"),
        this::erased);
  }

  private interface Look {
    void at(Store store, End end) throws BadInput, StoreFailure;
  }

  private static void started(Store store) throws BadInput, StoreFailure {
    store.start(CODE, Invented.opening());
  }

  /** Lets step after step fail, until an attempt takes fewer steps; each in a store of its own. */
  private void failAtEveryStep(boolean once, Attempt before, Attempt attempt, Look after)
      throws BadInput, StoreFailure {
    int step = 0;
    do {
      step++;
      Path clinic = folder.resolve("clinic-" + step);
      Store healthy = Invented.store(clinic);
      before.run(healthy);
      faults.arm(step, once ? step : Integer.MAX_VALUE - 1);
      End end = end(() -> attempt.run(Invented.store(FaultyFiles.of(clinic, faults))));
      faults.disarm();
      after.at(healthy, end);
      assertThat(healthy.verify(CODE)).as("step " + step).isEmpty();
    } while (faults.struck());
    assertThat(step).isGreaterThan(20);
  }

  private void added(Store store, End end) throws BadInput, StoreFailure {
    assertThat(store.read(CODE).size()).isEqualTo(end == End.REFUSED ? 1 : 2);
    assertThat(store.read(CODE).entries()).hasSize(end == End.REFUSED ? 1 : 2);
    store.add(CODE, Invented.note("goes on"));
  }

  private void startedOrNot(Store store, End end) throws BadInput, StoreFailure {
    if (end == End.REFUSED) {
      assertThat(store.codes()).isEmpty();
      started(store);
    }
    assertThat(store.read(CODE).size()).isEqualTo(1);
  }

  private void erased(Store store, End end) throws BadInput, StoreFailure {
    FittingRecord record = store.read(CODE);
    assertThat(record.size()).isEqualTo(1);
    if (end != End.REFUSED) {
      assertThat(record.isErased()).isTrue();
    }
  }

  @Test
  void aSourceThatBreaksLeavesTheRecordAsItWas() throws BadInput, StoreFailure {
    Store store = Invented.store(folder);
    store.start(CODE, Invented.opening());
    for (int length : new int[] {0, 1, 5000, 100_000}) {
      Addition stand =
          new Addition(
              Invented.AT,
              "AB",
              Optional.empty(),
              AnswersToContent.content(EntryKind.STAND, Answers.NONE),
              List.of(new Addition.Attached(KeptFile.Role.RECORDING, breaking(length))));
      assertThat(end(() -> store.add(CODE, stand))).isEqualTo(End.REFUSED);
      assertThat(store.read(CODE).size()).isEqualTo(1);
      assertThat(store.verify(CODE)).isEmpty();
    }
  }

  private interface Call {
    void run() throws BadInput, StoreFailure;
  }

  private static End end(Call call) {
    try {
      call.run();
      return End.DONE;
    } catch (BadInput e) {
      throw new AssertionError(e);
    } catch (StoreFailure e) {
      Topic topic = e.problems().get(0).topic();
      assertThat(topic).isIn(StoreProblem.CANNOT_WRITE, StoreProblem.WRITTEN_BUT);
      assertThat(e.problems().get(0).arguments().toString()).contains(Faults.REASON);
      return topic == StoreProblem.WRITTEN_BUT ? End.WRITTEN_BUT : End.REFUSED;
    }
  }

  /** A file that gives some bytes and then fails. */
  private static NamedBytes breaking(int length) {
    return new NamedBytes() {
      @Override
      public String name() {
        return "walk.csv";
      }

      @Override
      public InputStream open() {
        return new FilterInputStream(InputStream.nullInputStream()) {
          private int left = length;

          @Override
          public int read() throws IOException {
            if (left-- <= 0) {
              throw new IOException(Faults.REASON);
            }
            return 'x';
          }

          @Override
          public int read(byte[] bytes, int from, int count) throws IOException {
            bytes[from] = (byte) read();
            return 1;
          }
        };
      }
    };
  }
}
