package caryatid.views;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Invented;
import caryatid.entry.BenchItem;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.fitting.Addition;
import caryatid.fitting.FittingRecord;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Invented records: what was changed between their stands. */
class StandChangeTest {
  private final List<Entry> entries = new ArrayList<>();

  private List<StandChange> changes() {
    int size = entries.size();
    return StandChange.of(
        new FittingRecord(
            Invented.CODE, "0".repeat(128), size, size, Map.of(), entries, List.of(), List.of()));
  }

  private StandChangeTest add(EntryKind kind, Answers content) {
    int number = entries.size() + 1;
    Addition added = Invented.addition(kind, content);
    entries.add(
        new Entry(
            number,
            added.at().plusMinutes(number),
            "AB",
            Optional.empty(),
            added.content(),
            List.of()));
    return this;
  }

  private StandChangeTest stand(Object... answers) {
    return add(EntryKind.STAND, Invented.answers(answers));
  }

  private StandChangeTest set(String item, String to, String unit) {
    return add(
        EntryKind.BENCH_ALIGNMENT,
        Invented.answers(
            "items", Invented.answers("item", item, "set", new BigDecimal(to), "unit", unit)));
  }

  /** The letters as people count columns: after z comes aa, after az ba, after zz aaa. */
  @ParameterizedTest
  @CsvSource({
    "1, a",
    "2, b",
    "26, z",
    "27, aa",
    "28, ab",
    "52, az",
    "53, ba",
    "78, bz",
    "79, ca",
    "702, zz",
    "703, aaa",
    "704, aab"
  })
  void changesAreNamedByLetters(int number, String name) {
    stand("footwear", "shoe");
    for (int i = 0; i < number; i++) {
      stand("changed", "moved");
    }
    assertThat(changes()).hasSize(number);
    assertThat(changes().get(number - 1).name()).isEqualTo(name);
  }

  @Test
  void betweenStandsOfTheSameNothingWasChanged() {
    stand("footwear", "shoe").stand("footwear", " Shoe ").stand("comfort", "good");
    assertThat(changes()).isEmpty();
  }

  @Test
  void theFirstStandChangesNothing() {
    set("socket flexion", "5", "deg").stand("changed", "moved", "why", "toe drags");
    assertThat(changes()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"changed", "why"})
  void eachWordOfTheLaterStandIsAChange(String key) {
    stand("footwear", "shoe").stand(key, "foot turned out");
    assertThat(changes()).hasSize(1);
    StandChange change = changes().get(0);
    assertThat(change.said().or(change::why)).contains("foot turned out");
    assertThat(change.said().isPresent()).isEqualTo(key.equals("changed"));
    assertThat(change.before()).isEqualTo(1);
    assertThat(change.stand()).isEqualTo(2);
    assertThat(change.at()).isEqualTo(Invented.AT.plusMinutes(2));
  }

  /** As the window keeps it: beside the setting, not in the stand that follows. */
  @Test
  void theReasonOfAChangeStandsInItsOwnEntry() {
    set("socket flexion", "5", "deg").stand("comfort", "1");
    add(
        EntryKind.BENCH_ALIGNMENT,
        Invented.answers(
            "items",
            Invented.answers(
                "item",
                "socket flexion",
                "set",
                new BigDecimal("8"),
                "unit",
                "deg",
                "why",
                "knee flexes late")));
    stand("comfort", "2");
    stand("why", "again");
    assertThat(changes())
        .extracting(StandChange::why)
        .containsExactly(Optional.of("knee flexes late"), Optional.of("again"));
  }

  @Test
  void anotherShoeIsAChange() {
    stand("footwear", "shoe").stand("footwear", "boot");
    assertThat(changes())
        .extracting(StandChange::shoe)
        .containsExactly(Optional.of(new StandChange.ShoeChange("shoe", "boot")));
  }

  @ParameterizedTest
  @CsvSource({"footwear, comfort", "comfort, footwear"})
  void aShoeThatOneStandDoesNotNameIsNoChange(String earlier, String later) {
    stand(earlier, "good").stand(later, "fair");
    assertThat(changes()).isEmpty();
  }

  @Test
  void aSettingChangesFromWhatItWasAtTheEarlierStand() {
    set("socket flexion", "5.25", "deg").set("foot rotation", "7.5", "deg").stand("comfort", "1");
    set("socket flexion", "6", "deg").set("socket flexion", "6.75", "deg");
    set("foot rotation", "7.50", "deg").set("foot forward", "12.5", "mm").stand("comfort", "2");
    assertThat(changes()).hasSize(1);
    assertThat(changes().get(0).settings())
        .extracting(
            s ->
                s.row().item().code()
                    + s.row().item().text()
                    + s.was()
                    + s.row().set()
                    + s.row().unit())
        .containsExactly(
            Optional.of(BenchItem.SOCKET_FLEXION) + "Optional[5.25]6.75DEG",
            "Optional.emptyfoot forwardOptional.empty12.5MM");
  }

  @Test
  void aSettingInAnotherUnitSaysNothingOfWhatItWas() {
    set("socket flexion", "5", "deg").stand("comfort", "1");
    set("socket flexion", "5", "mm").stand("comfort", "2");
    assertThat(changes().get(0).settings().get(0).was()).isEmpty();
  }

  /** By time; of one time, by the entry. */
  @ParameterizedTest
  @CsvSource({
    "-1, 1, true",
    "-1, 9, true",
    "0, 1, true",
    "0, 2, false",
    "0, 3, false",
    "1, 1, false"
  })
  void aChangeIsAfterWhatWasEarlier(int minutes, int entry, boolean after) {
    stand("footwear", "shoe").stand("footwear", "boot");
    StandChange change = changes().get(0);
    assertThat(change.isAfter(change.at().plus(Duration.ofMinutes(minutes)), entry))
        .isEqualTo(after);
  }

  @Test
  void theLastBenchAlignmentAfterAnEntryIsFound() {
    set("socket flexion", "5", "deg").stand("comfort", "1");
    set("socket flexion", "6", "deg").set("socket flexion", "7", "deg").stand("comfort", "2");
    assertThat(StandChange.since(entries, 2)).contains(entries.get(3));
    assertThat(StandChange.since(entries, 5)).isEmpty();
  }
}
