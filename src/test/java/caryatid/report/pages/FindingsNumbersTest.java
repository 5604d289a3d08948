package caryatid.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Stand;
import caryatid.alignment.StateRemark;
import caryatid.demo.Numbered;
import caryatid.geometry.Side;
import caryatid.loadline.Finding;
import caryatid.loadline.LoadLineRemark;
import caryatid.loadline.Offset;
import caryatid.loadline.Verdict;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.remark.Weight;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands below the table of findings and above that of stands: its numbers and its marks. */
class FindingsNumbersTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final AlignmentState STATE = Numbered.state();

  private static AlignmentState state(List<Finding> findings, List<Remark> remarks) {
    return new AlignmentState(STATE.stands(), STATE.offsets(), findings, STATE.withheld(), remarks);
  }

  /** The table's last column refers to a source by its number. */
  @Test
  void everySourceHasTheNumberThatTheTableGivesIt() {
    FindingsTable table = new FindingsTable(STATE, ENGLISH);
    assertThat(table.sources().orElseThrow().replace('\u00a0', ' '))
        .isEqualTo(
            "Sources: 1 ankle leaflet (in shoes); 2 knee leaflet; 3 another knee leaflet;"
                + " 4 hip leaflet.");
    assertThat(table.results().rows())
        .extracting(row -> row.get(row.size() - 1))
        .containsExactly("1", "2", "3", "4");
  }

  /** The ankle's alone cannot be decided. */
  @Test
  void aToleranceThatCannotBeDecidedIsMarkedAndExplained() {
    FindingsTable all = new FindingsTable(STATE, ENGLISH);
    assertThat(all.results().rows()).filteredOn(row -> row.toString().contains("†")).hasSize(1);
    assertThat(all.explanation())
        .contains(
            "† Tolerance narrower than this measurement can decide; below it says what would help"
                + " most.");
    assertThat(
            new FindingsTable(state(STATE.findings().subList(1, 3), List.of()), ENGLISH)
                .explanation())
        .isEmpty();
    Remark bends = Remark.of(LoadLineRemark.LINE_BEHIND_KNEE, Argument.term(Side.RIGHT));
    assertThat(new FindingsTable(state(STATE.findings(), List.of(bends)), ENGLISH).explanation())
        .contains("† Tolerance narrower than this measurement can decide.");
  }

  private static List<String> last(AlignmentState of) {
    return new UncertaintyTable(of, ENGLISH)
        .budget().rows().stream()
            .map(row -> row.get(row.size() - 1).replace('\u00a0', ' '))
            .toList();
  }

  /** Nothing is to be repeated or marked better before what is unsafe. */
  @Test
  void whereTheKneeMayBendNothingIsAdvised() {
    assertThat(last(STATE)).containsExactly("repeat: to ± 6.6 mm", "mark better: to ± 7.7 mm", "–");
    Remark bends = Remark.of(LoadLineRemark.LINE_BEHIND_KNEE, Argument.term(Side.RIGHT));
    assertThat(last(state(STATE.findings(), List.of(bends)))).containsExactly("–", "–", "–");
  }

  private static Finding unsure(double levelMm) {
    Finding was = STATE.findings().get(2);
    Estimate mm =
        Estimate.exact(5.8)
            .with(new Contribution(new Source(Cause.SWAY, "it"), 2.4, 1, 5))
            .with(new Contribution(new Source(Cause.LEVEL, "it"), levelMm, 1, 5));
    Offset offset = new Offset(was.offset().at(), was.offset().of(), was.offset().kind(), mm);
    return new Finding(offset, was.target(), 0.964, true, Verdict.WITHIN);
  }

  /** What would be 0.0 everywhere has no column. */
  @ParameterizedTest
  @CsvSource({"0.04, 1", "0.05, 2", "0.06, 2"})
  void onlyWhatIsNotZeroHasAColumn(double levelMm, int causes) {
    Block.Table budget =
        new UncertaintyTable(state(List.of(unsure(levelMm)), List.of()), ENGLISH).budget();
    assertThat(budget.columns()).hasSize(2 + causes + 2);
  }

  private static List<String> words(Weight... weights) {
    return new RemarkList(state(List.of(), EACH), ENGLISH)
        .of(weights).stream().map(said -> said.lead() + ": " + said.words()).toList();
  }

  private static final List<Remark> EACH =
      List.of(
          Remark.of(StateRemark.ONE_STAND),
          Remark.of(
              LoadLineRemark.LINE_BEHIND_KNEE, Argument.term(Side.RIGHT), Argument.of(3, Unit.MM)),
          Remark.of(StateRemark.SIMPLE_RULE),
          Remark.of(StateRemark.SMALLEST_DIFFERENCE));

  @Test
  void remarksAreListedByTheirWeightWithoutThoseOfTheTables() {
    assertThat(words(Weight.SAFETY)).hasSize(1).allMatch(said -> said.startsWith("Take care: "));
    assertThat(words(Weight.NOTE)).hasSize(1).allMatch(said -> said.startsWith("Note: "));
    // Also of the hip's target, which nothing was found for.
    assertThat(words(Weight.IMPORTANT)).hasSize(2).allMatch(said -> said.startsWith("Remark: "));
    assertThat(words(Weight.SAFETY, Weight.NOTE)).hasSize(2);
  }

  private static List<String> leads(List<Stand> stands) {
    return new StandTable(stands, ENGLISH)
        .stretches().points().stream().map(Block.Bullet::lead).toList();
  }

  @Test
  void standsAreCountedWhereThereAreSeveral() {
    assertThat(leads(STATE.stands())).containsExactly("1 stand-1.csv", "2 stand-2.csv");
    assertThat(leads(STATE.stands().subList(0, 1))).containsExactly("stand-1.csv");
  }

  /** A row a load: of the left foot, the right foot and the whole body. */
  @Test
  void loadsHaveTheirStandsNumberWhereThereAreSeveral() {
    Block.Table two = new StandTable(STATE.stands(), ENGLISH).loads();
    assertThat(two.columns()).hasSize(9);
    assertThat(two.rows())
        .extracting(row -> row.get(0))
        .containsExactly("1", "1", "1", "2", "2", "2");
    Block.Table one = new StandTable(STATE.stands().subList(0, 1), ENGLISH).loads();
    assertThat(one.columns()).hasSize(8);
    assertThat(one.rows()).allMatch(row -> row.size() == 8);
  }
}
