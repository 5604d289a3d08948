package caryatid.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.EarlierState;
import caryatid.alignment.EarlierStates;
import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.alignment.StateOffset;
import caryatid.alignment.StateRemark;
import caryatid.demo.ChangedStand;
import caryatid.demo.Numbered;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Offset;
import caryatid.recording.model.Provenance;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.report.pages.Block.Bullet;
import caryatid.report.pages.Block.Facts;
import caryatid.report.pages.Block.Heading;
import caryatid.report.pages.Block.Points;
import caryatid.report.pages.Block.Prose;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What stands on page two, and what of several stands on page three. */
class SecondPageTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final AlignmentState STATE = Numbered.state();
  private static final int LAYOUT = 7;
  private static final Remark NOTE = Remark.of(StateRemark.ONE_STAND, Argument.count(1));

  private static SecondPage page(List<Stand> stands, List<Remark> remarks) {
    return page(
        new AlignmentState(stands, STATE.offsets(), STATE.findings(), STATE.withheld(), remarks),
        Optional.empty());
  }

  private static SecondPage page(AlignmentState state, Optional<EarlierStates> earlier) {
    Result result = new Result(3, "caryatid test", state, earlier);
    return new SecondPage(result, List.of(), LAYOUT, ENGLISH);
  }

  private static <B extends Block> Stream<B> only(Class<B> kind, List<Block> blocks) {
    return blocks.stream().filter(kind::isInstance).map(kind::cast);
  }

  private static List<String> headings(List<Block> blocks) {
    return only(Heading.class, blocks).map(Heading::words).toList();
  }

  private static List<String> prose(List<Block> blocks) {
    return only(Prose.class, blocks).map(p -> p.words().replace('\u00a0', ' ')).toList();
  }

  private static List<String> facts(List<Block> blocks) {
    return only(Facts.class, blocks)
        .flatMap(facts -> facts.facts().stream())
        .map(fact -> fact.label() + ": " + fact.value())
        .toList();
  }

  /**
   * The knee's line from 22.6 to 12.6 mm posterior, by 10 mm; the whole body's from 4.5 to 10.5 mm
   * anterior, by 6 mm. Of the ankle only one line is known before, sideways there is no whole
   * body's, and the state before may tell nothing.
   */
  @Test
  void aChangeIsSplitIntoTheFootsLineAndTheWholeBodys() {
    LandmarkInPlane knee = new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, "knee centre");
    LandmarkInPlane ankle = new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, "ankle axis");
    List<StateOffset> offsets = new ArrayList<>(STATE.offsets());
    for (LandmarkInPlane at : List.of(knee, ankle)) {
      Offset body =
          new Offset(at, LoadLineOwner.WHOLE_BODY, LoadLineMethod.VERTICAL, Estimate.exact(10.5));
      offsets.add(new StateOffset(body, 1, Optional.empty()));
    }
    AlignmentState state =
        new AlignmentState(STATE.stands(), offsets, STATE.findings(), List.of(), List.of());
    List<EarlierState.EarlierOffset> then =
        List.of(
            earlier(knee, LoadLineOwner.RIGHT_FOOT, -22.6),
            earlier(knee, LoadLineOwner.WHOLE_BODY, 4.5),
            earlier(ankle, LoadLineOwner.RIGHT_FOOT, 40));
    assertThat(prose(page(state, Optional.of(before(then))).blocks(true)))
        .contains(
            "Since the previous state: at the prosthetic knee axis (right) the foot's line moved by"
                + " 10.0 mm anterior, and the whole body's line by 6.0 mm anterior. This describes"
                + " posture and is not a result: a change of alignment moves the whole body's line"
                + " too.");
    assertThat(prose(page(state, Optional.of(before(List.of()))).blocks(true)))
        .noneMatch(words -> words.startsWith("Since"));
    assertThat(prose(page(state, Optional.empty()).blocks(true)))
        .noneMatch(words -> words.startsWith("Since"));
  }

  private static EarlierState.EarlierOffset earlier(
      LandmarkInPlane at, LoadLineOwner of, double mm) {
    return new EarlierState.EarlierOffset(at, of, mm, OptionalDouble.empty());
  }

  private static EarlierStates before(List<EarlierState.EarlierOffset> offsets) {
    EarlierState state =
        new EarlierState(
            "0",
            "DEMO-7",
            OffsetDateTime.parse("2026-03-04T09:15+01:00"),
            "walking shoe",
            14.5,
            1,
            offsets,
            true);
    return new EarlierStates(
        new Provenance("earlier-states.json", 5, "d".repeat(128)), List.of(state));
  }

  @Test
  void ofOneStandAllIsOnPageTwo() {
    SecondPage one = page(STATE.stands().subList(0, 1), List.of());
    assertThat(headings(one.blocks(true)))
        .containsExactly(
            "Findings in numbers",
            "How it was found",
            "What makes each finding uncertain, in mm",
            "What the plate recorded",
            "External moments per stand",
            "Cautions",
            "Where it comes from");
    assertThat(one.further()).isEmpty();
  }

  @Test
  void ofSeveralStandsMomentsCautionsAndOriginAreOnPageThree() {
    SecondPage two = page(STATE.stands(), List.of());
    assertThat(headings(two.blocks(true)))
        .containsExactly(
            "Findings in numbers",
            "How it was found",
            "What makes each finding uncertain, in mm",
            "What the plate recorded");
    assertThat(headings(two.further()))
        .containsExactly("External moments per stand", "Cautions", "Where it comes from");
  }

  @Test
  void notesStandHereUnlessPageOneHasThem() {
    SecondPage noted = page(STATE.stands(), List.of(NOTE));
    assertThat(headings(noted.blocks(true))).contains("Notes");
    assertThat(only(Points.class, noted.blocks(true)).flatMap(p -> p.points().stream()))
        .extracting(Bullet::lead)
        .contains("Note");
    assertThat(headings(noted.blocks(false))).doesNotContain("Notes");
    assertThat(headings(page(STATE.stands(), List.of()).blocks(true))).doesNotContain("Notes");
  }

  @Test
  void belowTheFindingsStandMarksNamesAndSources() {
    List<String> said = prose(page(STATE.stands(), List.of()).blocks(false));
    assertThat(said)
        .startsWith(
            "† Tolerance narrower than this measurement can decide; below it says what would help"
                + " most.",
            "Sources: 1 ankle leaflet (in shoes); 2 knee leaflet; 3 another knee leaflet;"
                + " 4 hip leaflet.")
        .contains("Sway (SD: standard deviation) after a low-pass at 10.0 Hz.");
    Stand open = ChangedStand.ankleAxis(STATE.stands().get(0), Optional.empty());
    assertThat(prose(page(List.of(open), List.of()).blocks(false)).get(1))
        .isEqualTo(
            "The sheet marks an ankle axis but does not say that this ankle has one"
                + " (`ankle-axis: yes`), so the point is called foot reference point.");
  }

  /** Safety: in full, in this order, in every report. */
  @Test
  void everyCautionIsThere() {
    assertThat(prose(page(STATE.stands(), List.of()).further()))
        .containsExactly(
            "Not a medical device. For licensed practitioners."
                + " The component maker's instructions and local rules come first."
                + " Secure all fasteners to the stated torque after every change and before the"
                + " wearer stands or walks."
                + " Change nothing under load."
                + " Let the wearer stand between rails or with help at hand after every change."
                + " Mind the plate's edge."
                + " Stop at pain or fatigue."
                + " Check the skin."
                + " Check a prosthetic knee's mode and battery."
                + " The wearer's comfort, skin and gait decide, not the plot.");
  }

  private static Provenance file(String name, String sixteen) {
    return new Provenance(name, 77, sixteen + "f".repeat(112));
  }

  @Test
  void everyFileIsNamedWithItsDigits() {
    Optional<Provenance> plate = Optional.of(file("plate.yaml", "0123456789abcdef"));
    Provenance sheet = file("sheet.yaml", "1123456789abcdef");
    Stand one =
        ChangedStand.files(
            STATE.stands().get(0), file("one.csv", "2123456789abcdef"), sheet, plate);
    Stand two =
        ChangedStand.files(
            STATE.stands().get(1), file("two.csv", "3123456789abcdef"), sheet, plate);
    AlignmentState state =
        new AlignmentState(
            List.of(one, two), STATE.offsets(), STATE.findings(), List.of(), List.of());
    EarlierStates earlier =
        new EarlierStates(
            file("earlier-states.json", "4123456789abcdef"),
            List.of(EarlierState.of(STATE, "a".repeat(128))));
    assertThat(facts(page(state, Optional.of(earlier)).further()))
        .containsExactly(
            "Program: caryatid test; method 3, page layout 7",
            "Recording: one.csv, 2123456789abcdef…",
            "Recording: two.csv, 3123456789abcdef…",
            "Trial sheet: sheet.yaml, 1123456789abcdef…",
            "Plate description: plate.yaml, 0123456789abcdef…",
            "Earlier states: earlier-states.json, 4123456789abcdef…",
            "Checksums: SHA-512: 16 of 128 digits; all in the JSON");
  }
}
