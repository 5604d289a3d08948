package caryatid.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.Stand;
import caryatid.demo.ChangedStand;
import caryatid.demo.Numbered;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Moment;
import caryatid.standing.PercentileRank;
import caryatid.standing.Stance;
import caryatid.standing.Standing;
import caryatid.standing.Sway;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the report says of stands that are not like those of {@link ReportNumbersTest}: one alone,
 * without filtered sway, without moments about the force's line or per body mass. The numbers are
 * those of {@link Numbered}, worked out by hand.
 */
class StandFactsNumbersTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final List<Stand> BOTH = Numbered.state().stands();
  private static final List<Stand> ONE = BOTH.subList(0, 1);

  private static String plain(String words) {
    return words.replace('\u00a0', ' ');
  }

  @Test
  void everyFactShowsItsOwn() {
    assertThat(TrialFacts.of(BOTH, ENGLISH))
        .extracting(fact -> plain(fact.label() + ": " + fact.value()))
        .containsExactly(
            "Body mass: 83.6 kg",
            "Stance: one plate under each foot",
            "Other foot: on block, height −2.2 mm",
            "Hands: free",
            "Stance width: 172.3 mm",
            "Toe-out: 6.4°",
            "Walked since change: 9 min",
            "Prosthetic knee: not locked, standing",
            "foot: demo foot, serial X1-0042",
            "Last change: heel wedge one step firmer; ankle plantarflexed by 1.5 degrees");
  }

  /** Load share: 1.95996 times 1.1 %; one stand is not counted. */
  @Test
  void theSummaryOfOneStandDoesNotCountIt() {
    assertThat(plain(TrialSummary.of(ONE, ENGLISH)))
        .isEqualTo(
            "transfemoral · walking shoe, heel height 14.5 mm · 2026-03-04 10:15 +01:00"
                + " · load on the right 41.2 % ± 2.2 %");
  }

  /** Load share: known of the first stand alone, so that its mean is its own. */
  @Test
  void aStandWithoutTheShareIsNotPartOfItsMean() {
    List<Stand> stands = List.of(BOTH.get(0), ChangedStand.share(BOTH.get(1), Map.of()));
    assertThat(plain(TrialSummary.of(stands, ENGLISH)))
        .endsWith(" · 2 stands · load on the right 41.2 % ± 2.2 %");
  }

  @ParameterizedTest
  @MethodSource
  void whereTheFeetStoodIsSaid(Stance stance, String expected) {
    Stand stand = ChangedStand.stance(BOTH.get(0), stance);
    assertThat(TrialFacts.of(List.of(stand), ENGLISH)).contains(new Block.Fact("Stance", expected));
  }

  static List<Arguments> whereTheFeetStoodIsSaid() {
    return List.of(
        Arguments.of(
            new Stance.PlatePerFoot("left plate", "right plate"), "one plate under each foot"),
        Arguments.of(new Stance.BothFeetOnOnePlate(Optional.empty()), "both feet on one plate"),
        Arguments.of(
            new Stance.ProstheticFootOnPlate(Optional.empty()),
            "prosthetic foot alone on the plate"));
  }

  private static Stand with(Stand stand, Standing standing, List<Moment> moments) {
    return new Stand(
        stand.recording(),
        stand.sheet(),
        stand.description(),
        stand.trial(),
        stand.landmarks(),
        standing,
        stand.offsets(),
        moments,
        stand.remarks());
  }

  private static Stand moments(Stand stand, Predicate<Moment> which) {
    return with(stand, stand.standing(), stand.moments().stream().filter(which).toList());
  }

  /** Headings, then the rows. */
  private static List<List<String>> cells(List<Stand> stands) {
    Block.Table table = new MomentTable(stands, ENGLISH).table().orElseThrow();
    List<String> headings = table.columns().stream().map(Block.TableColumn::heading).toList();
    return IntStream.rangeClosed(0, table.rows().size())
        .mapToObj(i -> i == 0 ? headings : table.rows().get(i - 1))
        .map(row -> row.stream().map(StandFactsNumbersTest::plain).toList())
        .toList();
  }

  @Test
  void momentsOfOneStandByTheVerticalAlone() {
    Stand stand = moments(BOTH.get(0), m -> m.kind() == LoadLineMethod.VERTICAL);
    assertThat(cells(List.of(stand)))
        .containsExactly(
            List.of(
                "Landmark", "Plane", "By the vertical, N m", "The same, N m/kg", "What it does"),
            List.of("prosthetic knee axis", "sagittal", "−4.4 ± 1.8", "−0.053", "bends the knee"),
            List.of(
                "ankle axis",
                "sagittal",
                "+15.6 ± 2.5",
                "–",
                "tips the shank forward over the foot"));
  }

  @Test
  void momentsByTheForcesLineAlone() {
    Stand stand = moments(BOTH.get(0), m -> m.kind() == LoadLineMethod.MEASURED_FORCE);
    assertThat(cells(List.of(stand)).get(1))
        .containsSequence("sagittal", "–")
        .containsSequence("−3.2 ± 1.4", "too small to tell its direction");
  }

  @Test
  void momentsOfAnUnknownBodyMass() {
    Stand stand = moments(BOTH.get(0), m -> m.at().landmark().equals("ankle axis"));
    assertThat(cells(List.of(stand)))
        .containsExactly(
            List.of("Landmark", "Plane", "By the vertical, N m", "What it does"),
            List.of(
                "ankle axis", "sagittal", "+15.6 ± 2.5", "tips the shank forward over the foot"));
  }

  @Test
  void momentsOfSeveralStandsStandUnderTheirNumbers() {
    Block.Table table = new MomentTable(BOTH, ENGLISH).table().orElseThrow();
    assertThat(table.rows()).extracting(row -> row.get(0)).containsExactly("1", "1", "2", "2");
    assertThat(plain(table.rows().get(3).get(3))).isEqualTo("+16.6 ± 2.9");
  }

  @Test
  void withoutMomentsThereIsNoTable() {
    Optional<Block.Table> table =
        new MomentTable(List.of(moments(BOTH.get(0), m -> false)), ENGLISH).table();
    assertThat(table).isEmpty();
  }

  private static Stand standing(
      Stand stand, Predicate<Sway> sways, List<PercentileRank> placements) {
    Standing was = stand.standing();
    Standing is =
        new Standing(
            was.stretch(),
            was.rateHz(),
            was.loads(),
            was.sway().stream().filter(sways).toList(),
            placements,
            was.share(),
            was.remarks());
    return with(stand, is, stand.moments());
  }

  private static String explanation(Stand... stands) {
    return plain(new StandTable(List.of(stands), ENGLISH).explanation());
  }

  private static final String FILTERED =
      "Sway (SD: standard deviation) after a low-pass at 10.0 Hz.";
  private static final String NOT_FILTERED =
      "Sway not filtered where the sampling rate is too low for it.";
  private static final String NOT_PLACED =
      "Sway is compared with other people's only for the whole body over about 60 s.";

  @Test
  void theExplanationNamesEachWayThatSwayWasFound() {
    Stand first = BOTH.get(0);
    Stand second = BOTH.get(1);
    Stand raw = standing(second, sway -> sway.lowPassHz().isEmpty(), List.of());
    assertThat(explanation(first)).isEqualTo(FILTERED);
    assertThat(explanation(second)).isEqualTo(FILTERED + " " + NOT_PLACED);
    assertThat(explanation(first, second)).isEqualTo(FILTERED);
    assertThat(explanation(raw)).isEqualTo(NOT_FILTERED + " " + NOT_PLACED);
    assertThat(explanation(first, raw)).isEqualTo(FILTERED + " " + NOT_FILTERED);
    assertThat(explanation(standing(second, sway -> false, List.of()))).isEqualTo(NOT_PLACED);
  }
}
