package caryatid.views;

import static caryatid.demo.Invented.CODE;
import static caryatid.demo.Invented.answers;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Filled;
import caryatid.demo.Invented;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.entry.form.AnswersToContent;
import caryatid.fitting.Addition;
import caryatid.fitting.FittingRecord;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.store.Store;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ComparisonTest {
  @TempDir private Path folder;

  @Test
  void theNewestEntryOfEachKindCountsAndCorrectedOnesDoNot() throws BadInput, StoreFailure {
    Store store = Invented.store(folder);
    store.start(CODE, Invented.opening());
    store.add(CODE, bench(5, Optional.empty()));
    store.add(CODE, Invented.note("steady"));
    store.add(CODE, bench(7, Optional.empty()));
    store.add(CODE, bench(6, Optional.of(new Entry.Correction(4, "misread", Optional.empty()))));
    FittingRecord record = store.read(CODE);
    assertThat(Comparison.of(record, 2, 3).differences()).isEmpty();
    assertThat(Comparison.of(record, 2, 4).differences()).containsExactly(set(5, 7));
    assertThat(Comparison.of(record, 4, 5).differences()).containsExactly(set(7, 6));
    assertThat(Comparison.of(record, 2, 5).differences()).containsExactly(set(5, 6));
    assertThat(Comparison.of(record, 1, 2).differences())
        .extracting(Comparison.Difference::field)
        .containsExactly("items", "set", "unit");
  }

  private static Comparison.Difference set(int before, int after) {
    return new Comparison.Difference(
        EntryKind.BENCH_ALIGNMENT,
        Optional.of(
            new Comparison.Row(
                Filled.row(EntryKind.BENCH_ALIGNMENT, "items", answers("item", "socket flexion")),
                1)),
        "set",
        Optional.of("deg"),
        amount(before),
        amount(after));
  }

  private static Optional<Answers.Value> amount(int number) {
    return Optional.of(answers("n", number).values().get("n"));
  }

  private static Addition bench(int degrees, Optional<Entry.Correction> corrects) {
    Answers item = answers("item", "socket flexion", "set", degrees, "unit", "deg");
    return new Addition(
        Invented.AT,
        "AB",
        corrects,
        AnswersToContent.content(
            EntryKind.BENCH_ALIGNMENT,
            Filled.of(EntryKind.BENCH_ALIGNMENT, answers("items", item))),
        List.of());
  }

  @Test
  void aRowOfWordsAloneIsComparedLikeAnyOther() throws BadInput, StoreFailure {
    Store store = Invented.store(folder);
    store.start(CODE, Invented.opening());
    store.add(CODE, walking(answers("deviation", "drop-off")));
    store.add(CODE, walking(answers("deviation", "drop-off", "severity", "slight")));
    store.add(CODE, walking(answers("deviation", "vaulting")));
    FittingRecord record = store.read(CODE);
    assertThat(Comparison.of(record, 2, 3).differences())
        .containsExactly(walking("drop-off", "severity", "", "slight"));
    assertThat(Comparison.of(record, 2, 4).differences())
        .containsExactly(
            walking("", "observations", "drop-off", ""),
            walking("", "observations", "", "vaulting"));
  }

  @Test
  void twoRowsOfOneNameStayTwo() throws BadInput, StoreFailure {
    Store store = Invented.store(folder);
    store.start(CODE, Invented.opening());
    Answers slight = answers("deviation", "drop-off", "severity", "slight");
    store.add(CODE, walking(slight));
    store.add(CODE, walking(slight, slight));
    assertThat(Comparison.of(store.read(CODE), 2, 3).differences())
        .containsExactly(
            walking("", "observations", "", "drop-off"),
            walking(
                Optional.of(new Comparison.Row(about("drop-off"), 2)), "severity", "", "slight"));
  }

  @Test
  void anItemThatIsNotSetAnewStaysAsItWas() throws BadInput, StoreFailure {
    Store store = Invented.store(folder);
    store.start(CODE, Invented.opening());
    store.add(CODE, bench(5, Optional.empty()));
    Answers other = answers("item", "foot rotation", "set", 7, "unit", "deg");
    store.add(CODE, Invented.addition(EntryKind.BENCH_ALIGNMENT, answers("items", other)));
    assertThat(Comparison.of(store.read(CODE), 2, 3).differences())
        .extracting(d -> d.row().map(r -> text(r.about().name("item"))).orElse("") + d.field())
        .containsExactly("items", "foot rotationset", "foot rotationunit");
  }

  private static String text(Optional<Answers.Value.Name> name) {
    return name.map(Answers.Value.Name::text).orElse("");
  }

  private static Addition walking(Answers... rows) {
    return Invented.addition(
        EntryKind.WALKING,
        new Answers(Map.of("observations", new Answers.Value.Rows(List.of(rows)))));
  }

  private static Comparison.Difference walking(
      String row, String field, String before, String after) {
    Optional<Comparison.Row> named =
        row.isEmpty() ? Optional.empty() : Optional.of(new Comparison.Row(about(row), 1));
    return walking(named, field, before, after);
  }

  private static Comparison.Difference walking(
      Optional<Comparison.Row> row, String field, String before, String after) {
    boolean rows = field.equals("observations");
    return new Comparison.Difference(
        EntryKind.WALKING, row, field, Optional.empty(), value(rows, before), value(rows, after));
  }

  private static Answers about(String deviation) {
    return Filled.row(EntryKind.WALKING, "observations", answers("deviation", deviation));
  }

  private static Optional<Answers.Value> value(boolean row, String text) {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        row ? new Answers.Value.Rows(List.of(about(text))) : new Answers.Value.Words(text));
  }
}
