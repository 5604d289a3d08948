package caryatid.chart;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.EarlierState;
import caryatid.alignment.StateOffset;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Fill;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Pen;
import caryatid.demo.Demo;
import caryatid.demo.Numbered;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Finding;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.OffTargetHints;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.loadline.Verdict;
import caryatid.wording.Wording;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the strips say in letters, and what is read out in their place. The numbers are those of
 * {@link Numbered}; half-widths of marks are 1.95996 times 4.5, 3.5 and 2.5 mm.
 */
class StripWordsTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);

  private static Drawing strips(AlignmentState state, Plane plane, double share) {
    return Strips.plan(state, Optional.empty(), plane, Side.RIGHT, ENGLISH, share);
  }

  private static List<String> words(Stream<Mark> marks) {
    return marks
        .filter(Text.class::isInstance)
        .map(mark -> ((Text) mark).words().replace('\u00a0', ' '))
        .toList();
  }

  private static String letters(Drawing drawing) {
    return String.join(
        " | ", words(drawing.parts().stream().map(Part::marks).flatMap(Collection::stream)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "SAGITTAL | ankle axis, 81 mm up, known to within 4.9 mm (95 %). The load line runs 47 mm"
            + " anterior of it (+47.3 ± 12.5 mm, 95 %). Target +44.0 mm, tolerance +37.0 to +55.0"
            + " mm: ○ undecided: 8 mm within the tolerance",
        "SAGITTAL | prosthetic knee axis, 493 mm up, known to within 6.9 mm (95 %). The load line"
            + " runs 13 mm posterior of it (−12.6 ± 12.7 mm, 95 %). Target −4.0 mm, tolerance −9.0"
            + " to +5.0 mm: × tolerance not met",
        "SAGITTAL | greater trochanter, 905 mm up, known to within 8.8 mm (95 %). The load line"
            + " runs 23 mm posterior of it (−23.4 ± 5.3 mm, 95 %). no recommendation entered.",
        "FRONTAL | prosthetic knee axis, 493 mm up, known to within 8.2 mm (95 %). The load line"
            + " runs 6 mm lateral of it (+5.8 ± 11.6 mm, 95 %). Target +2.0 mm, tolerance −1.0 to"
            + " +10.0 mm: ● tolerance met"
      })
  void everyStripIsReadOutWithItsOwnNumbers(Plane plane, String said) {
    assertThat(strips(Numbered.state(), plane, 1).alternative().replace('\u00a0', ' '))
        .contains(said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "SAGITTAL | ankle axis",
        "SAGITTAL | , 81 mm up",
        "SAGITTAL | ○ undecided: 8 mm within the tolerance",
        "SAGITTAL | 47 mm anterior",
        "SAGITTAL | recommended +44 (+37 to +55)",
        "SAGITTAL | , 493 mm up",
        "SAGITTAL | × tolerance not met",
        "SAGITTAL | 13 mm posterior",
        "SAGITTAL | load line 4 mm too far posterior, 9 mm from the recommendation",
        "SAGITTAL | recommended −4 (−9 to +5)",
        "SAGITTAL | , 905 mm up",
        "SAGITTAL | 23 mm posterior",
        "SAGITTAL | no recommendation entered",
        "FRONTAL | ● tolerance met",
        "FRONTAL | 6 mm lateral",
        "FRONTAL | load line 4 mm lateral to the recommendation, 4 mm to spare",
        "FRONTAL | recommended +2 (−1 to +10)"
      })
  void everyStripShowsItsOwnNumbers(Plane plane, String shown) {
    assertThat(letters(strips(Numbered.state(), plane, 1))).contains(shown);
  }

  /**
   * In the least room the distances stand beside the result, and the recommendation is left out.
   */
  @Test
  void inLittleRoomResultAndDistancesStay() {
    assertThat(letters(strips(Numbered.state(), Plane.SAGITTAL, 0)))
        .contains("○ undecided: 8 mm within the tolerance")
        .contains("load line 3 mm anterior to the recommendation")
        .contains("× tolerance not met")
        .contains("load line 4 mm too far posterior, 9 mm from the recommendation")
        .doesNotContain("recommended +44");
  }

  private static AlignmentState knee(Offset offset, Optional<OffTargetHints> hints) {
    AlignmentState all = Numbered.state();
    Target was = all.findings().get(1).target();
    Target target =
        new Target(
            was.at(),
            was.recommendedMm(),
            was.belowMm(),
            was.aboveMm(),
            was.source(),
            was.line(),
            was.condition(),
            hints);
    Finding finding = new Finding(offset, target, 0.031, true, Verdict.OUTSIDE);
    return new AlignmentState(
        all.stands(),
        List.of(all.offsets().get(0), new StateOffset(offset, 9, Optional.empty())),
        List.of(all.findings().get(0), finding),
        List.of(),
        List.of());
  }

  @Test
  void whatTheDocumentSaysToLookAtStandsBesideItsOffset() {
    Offset offset = Numbered.state().findings().get(1).offset();
    OffTargetHints hints =
        new OffTargetHints(
            Optional.of("the toes"), Optional.of("the heel"), Optional.empty(), Optional.empty());
    assertThat(letters(strips(knee(offset, Optional.of(hints)), Plane.SAGITTAL, 1)))
        .contains("its document says to check: the heel")
        .doesNotContain("the toes");
  }

  private static Stream<Mark> key(AlignmentState state, Optional<EarlierState> before) {
    return ScaleBar.plan(state, before, ENGLISH, 186).parts().get(1).marks().stream();
  }

  @Test
  void theKeyExplainsWhatIsDrawnAndNoMore() {
    assertThat(words(key(Numbered.state(), Optional.empty())))
        .contains(
            "load line, 95 % interval",
            "recommended, with tolerance", "landmark: zero of its scale")
        .noneMatch(said -> said.startsWith("previous state"));
    AlignmentState bare =
        Demo.empty(Side.RIGHT)
            .landmark("knee centre", LandmarkKind.KNEE_CENTRE, 42, 85, 492, 4)
            .state(0);
    assertThat(words(key(bare, Optional.empty())))
        .contains("load line, 95 % interval", "landmark: zero of its scale")
        .doesNotContain("recommended, with tolerance");
  }

  @Test
  void theKeyNamesTheStateBefore() {
    Demo demo = Demo.transtibial(Side.RIGHT).shoe("clog");
    EarlierState before = EarlierState.of(demo.state(4), "0".repeat(128));
    assertThat(words(key(demo.state(0), Optional.of(before))))
        .filteredOn(said -> said.startsWith("previous state: "))
        .singleElement()
        .asString()
        .endsWith(", clog");
  }

  /** So far from the landmark that the scale is broken; 60 mm is not. */
  @ParameterizedTest
  @CsvSource({"60, false", "700, true"})
  void theKeyExplainsABrokenScale(double anteriorMm, boolean broken) {
    AlignmentState state = Demo.transtibial(Side.RIGHT).line(80, anteriorMm).state(0);
    assertThat(words(key(state, Optional.empty())).contains("scale broken: lies further out"))
        .isEqualTo(broken);
  }

  /** A full circle for met, an empty one for undecided, a cross for not met. */
  @Test
  void theLegendOfOffsetsShowsEachResultsOwnSign() {
    List<Mark> marks = new OffsetLegend(10, 180, ENGLISH).marks();
    assertThat(words(marks.stream()))
        .containsExactly(
            "recommended, with tolerance", "tolerance met", "undecided", "tolerance not met");
    assertThat(marks.stream().filter(Fill.class::isInstance).map(mark -> ((Fill) mark).ink()))
        .containsExactly(Ink.BLUE, Ink.WHITE);
    List<Stroke> lines = Ruled.strokes(Stream.of(Part.background(marks)), Pen.LOAD_LINE);
    List<Stroke> cross = lines.subList(lines.size() - 2, lines.size());
    assertThat(Ruled.middle(cross.get(0))).isEqualTo(Ruled.middle(cross.get(1)));
    assertThat(cross).noneMatch(Ruled::isLevel).noneMatch(Ruled::isUpright);
  }
}
