package caryatid.views;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Stand;
import caryatid.demo.ChangedStand;
import caryatid.demo.Entries;
import caryatid.demo.Invented;
import caryatid.demo.Numbered;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.recording.model.Provenance;
import caryatid.standing.Stance;
import caryatid.views.StateChange.Judgement;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StateChangeTest {
  private static final AlignmentState FIRST = Numbered.state();

  /** The ankle by 17 mm back, the knee by 16 mm forward, sideways by 9 mm. */
  private static final AlignmentState CHANGED = ChangedStand.moved(FIRST, -17, 16, 9);

  /** Entries: 1 opening, 2 to 4 stands. */
  private static List<Entry> entries() {
    return Entries.opened()
        .add(EntryKind.STAND, Invented.found(21))
        .add(EntryKind.STAND, Invented.found(24))
        .add(EntryKind.STAND, Invented.found(27))
        .all();
  }

  private static List<String> pairs(Map<Integer, AlignmentState> states) {
    return StateChange.of(entries(), states).stream()
        .map(c -> c.before() + " " + c.after())
        .toList();
  }

  @Test
  void everyMeasuredStateIsComparedWithTheOneMeasuredBefore() {
    assertThat(pairs(Map.of(2, FIRST, 3, CHANGED, 4, FIRST))).containsExactly("2 3", "3 4");
    assertThat(pairs(Map.of(2, FIRST, 4, CHANGED))).containsExactly("2 4");
    assertThat(pairs(Map.of(3, FIRST))).isEmpty();
  }

  @Test
  void onlyOffsetsThatAreComparedWithATargetAreJudged() {
    StateChange change = StateChange.of(entries(), Map.of(2, FIRST, 3, CHANGED)).get(0);
    assertThat(change.offsets())
        .extracting(offset -> offset.at().landmark())
        .containsExactly("ankle axis", "knee centre", "knee centre");
    assertThat(change.offsets().stream().map(Judgement::of))
        .containsExactly(Judgement.REAL, Judgement.REAL_IF_STAYED, Judgement.CHANCE);
  }

  @Test
  void statesOnOtherPlatesOrFeetAreNotCompared() {
    Stand stand = CHANGED.stands().get(0);
    Provenance file = new Provenance("plate.yaml", 5, "c".repeat(128));
    Stand onAnother =
        ChangedStand.files(stand, stand.recording(), stand.sheet(), Optional.of(file));
    assertThat(pairs(Map.of(2, FIRST, 3, with(onAnother)))).isEmpty();
    Stand otherwise = ChangedStand.stance(stand, new Stance.PlatePerFoot("left", "right plate"));
    assertThat(pairs(Map.of(2, FIRST, 3, with(otherwise)))).isEmpty();
  }

  private static AlignmentState with(Stand stand) {
    return new AlignmentState(
        List.of(stand), CHANGED.offsets(), CHANGED.findings(), List.of(), List.of());
  }
}
