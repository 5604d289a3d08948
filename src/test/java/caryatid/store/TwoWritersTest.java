package caryatid.store;

import static caryatid.demo.Invented.CODE;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Invented;
import caryatid.entry.StandSummary;
import caryatid.fitting.FittingRecord;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two programs that add to the same record at the same time. */
class TwoWritersTest {
  @TempDir private Path folder;

  @Test
  void twoProgramsAddingFiveEntriesEachMakeTen() throws Exception {
    addTogether(5);
  }

  @Test
  @Tag("proof")
  void twoProgramsAddingManyEntriesEachLoseNone() throws Exception {
    addTogether(Integer.getInteger("additions", 50));
  }

  private void addTogether(int each) throws Exception {
    Store store = Invented.store(folder);
    store.start(CODE, Invented.opening());
    Process one = adder(each, 1000);
    Process two = adder(each, 2000);
    assertThat(one.waitFor()).isZero();
    assertThat(two.waitFor()).isZero();
    FittingRecord record = store.read(CODE);
    assertThat(record.entries()).hasSize(1 + 2 * each);
    assertThat(
            record.entries().stream()
                .map(
                    e ->
                        e.content() instanceof StandSummary stood
                            ? stood.changed()
                            : Optional.empty())
                .distinct())
        .hasSize(1 + 2 * each);
    assertThat(store.verify(CODE)).isEmpty();
  }

  private Process adder(int count, int seed) throws Exception {
    return OtherJvm.start(
        folder.resolve("said-" + seed),
        Adder.class,
        "entries",
        folder.toString(),
        CODE.text(),
        "" + count,
        "" + seed);
  }
}
