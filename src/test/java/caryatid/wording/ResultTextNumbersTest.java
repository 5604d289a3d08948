package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.alignment.StateOffset;
import caryatid.alignment.StateRemark;
import caryatid.demo.ChangedStand;
import caryatid.demo.Numbered;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Finding;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.LoadLineRemark;
import caryatid.loadline.OffTargetHints;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Estimate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the text of a result says, from a result in which no two numbers are alike. Half-widths are
 * Student's t for 95 % (JCGM 100:2008, table G.2, with more digits) times the root of the sum of
 * the parts' squares: 2.77645 times 4.49110 mm, 2.36462 times 5.35724 mm, 1.95996 times 5.93380 mm,
 * and past the hip 2.22814 times 2.4 mm; of the load shares 1.95996 times 1.1 and 1.3 %.
 */
class ResultTextNumbersTest {

  /** A line's numbers, with their signs, in their order. */
  private static List<String> numbers(String line) {
    return Pattern.compile("[+−]?\\d+([.:-]\\d+)*")
        .matcher(line)
        .results()
        .map(MatchResult::group)
        .toList();
  }

  private static List<String> lines() {
    return ResultText.lines(Numbered.result(), Wording.in(Locale.ENGLISH));
  }

  @ParameterizedTest
  @CsvSource({
    "0, Wearer DEMO-7, 7 2026-03-04 10:15 +01:00",
    "1, stand-1.csv, 1 1.25 31.50 3.50 33.75",
    "2, right side, 41.2 2.2",
    "3, stand-2.csv, 2 2.75 29.40",
    "4, right side, 43.6 2.5",
    "6, 'sagittal, ankle axis', 47.3 +47.3 12.5 44.0 +37.0 +55.0 8 3",
    "7, 'sagittal, prosthetic knee axis', 12.6 −12.6 12.7 4.0 −9.0 +5.0 4 9",
    "8, 'frontal, prosthetic knee axis', 5.8 +5.8 11.6 2.0 −1.0 +10.0 4 4",
    "9, 'sagittal, greater trochanter', 23.4 −23.4 5.3",
    "10, 'frontal, greater trochanter', ''"
  })
  void everyNumberStandsInItsOwnPlace(int line, String about, String numbers) {
    assertThat(lines().get(line)).contains(about);
    assertThat(String.join(" ", numbers(lines().get(line)))).isEqualTo(numbers);
  }

  @ParameterizedTest
  @CsvSource({
    "6, anterior, anterior",
    "7, posterior, posterior",
    "8, lateral, lateral",
    "9, posterior, ",
  })
  void everyDistanceHasItsDirection(int line, String ofOffset, String ofTarget) {
    String words = lines().get(line).replace('\u00a0', ' ');
    assertThat(words).containsPattern("\\d mm " + ofOffset + " \\([+−]");
    if (ofTarget != null) {
      assertThat(words).containsPattern("recommended \\d+\\.\\d mm " + ofTarget + " \\([+−]");
    }
  }

  /** Of the whole body's line only where there is no other. */
  @Test
  void whereTheWholeBodysLineRunsIsToldIfNoOtherIsKnown() {
    StateOffset foot = offset(LoadLineOwner.RIGHT_FOOT, 12.3);
    StateOffset whole = offset(LoadLineOwner.WHOLE_BODY, 45.6);
    assertThat(String.join(" ", past(foot, whole))).contains("12.3").doesNotContain("45.6");
    assertThat(String.join(" ", past(whole))).contains("45.6");
  }

  private static StateOffset offset(LoadLineOwner of, double mm) {
    LandmarkInPlane hip = new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, "hip");
    return new StateOffset(
        new Offset(hip, of, LoadLineMethod.VERTICAL, Estimate.exact(mm)), 1, Optional.empty());
  }

  private static List<String> past(StateOffset... offsets) {
    AlignmentState all = Numbered.state();
    AlignmentState state =
        new AlignmentState(all.stands(), List.of(offsets), List.of(), List.of(), all.remarks());
    return ResultText.lines(
        new Result(Result.METHOD, "caryatid test", state), Wording.in(Locale.ENGLISH));
  }

  private static List<String> told(AlignmentState state) {
    return ResultText.lines(
            new Result(Result.METHOD, "caryatid test", state), Wording.in(Locale.ENGLISH))
        .stream()
        .map(line -> line.replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void whatIsUnsafeLeadsAndOtherRemarksFollow() {
    AlignmentState all = Numbered.state();
    Remark bends =
        Remark.of(
            LoadLineRemark.LINE_BEHIND_KNEE, Argument.term(Side.RIGHT), Argument.of(9, Unit.MM));
    List<String> lines =
        told(
            new AlignmentState(
                all.stands(),
                all.offsets(),
                all.findings(),
                all.withheld(),
                List.of(Remark.of(StateRemark.ONE_STAND), bends)));
    assertThat(lines.get(0)).startsWith("Take care: The knee may bend.");
    assertThat(lines).filteredOn(line -> line.startsWith("Take care")).hasSize(1);
    assertThat(lines.subList(lines.size() - 4, lines.size() - 1))
        .satisfiesExactly(
            before -> assertThat(before).isEmpty(),
            note -> assertThat(note).startsWith("Note: Only one stand: "),
            after -> assertThat(after).isEmpty());
    assertThat(told(all)).noneMatch(line -> line.startsWith("Note: "));
  }

  @Test
  void anAnkleAxisThatTheSheetLeavesOpenIsSaid() {
    AlignmentState all = Numbered.state();
    Stand open = ChangedStand.ankleAxis(all.stands().get(0), Optional.empty());
    AlignmentState state =
        new AlignmentState(List.of(open), all.offsets(), all.findings(), all.withheld(), List.of());
    assertThat(told(state)).anyMatch(line -> line.startsWith("The sheet marks an ankle axis"));
    assertThat(told(all)).noneMatch(line -> line.startsWith("The sheet marks an ankle axis"));
  }

  /** The longest part left out leads: 2.2 s unloaded, 1.3 s settling. */
  @Test
  void whyPartsWereLeftOutIsSaidTheLongestFirst() {
    assertThat(told(Numbered.state()).get(1))
        .contains("unloaded, settling after stepping on or before stepping off");
  }

  /** 12.6 mm posterior, where the tolerance ends 9 mm posterior. */
  @Test
  void whatTheDocumentSaysToLookAtFollowsItsFinding() {
    AlignmentState all = Numbered.state();
    Finding knee = all.findings().get(1);
    Target was = knee.target();
    OffTargetHints hints =
        new OffTargetHints(
            Optional.of("the toes"), Optional.of("the heel"), Optional.empty(), Optional.empty());
    Target hinted =
        new Target(
            was.at(),
            was.recommendedMm(),
            was.belowMm(),
            was.aboveMm(),
            was.source(),
            was.line(),
            was.condition(),
            Optional.of(hints));
    Finding advised = new Finding(knee.offset(), hinted, 0.031, true, knee.verdict());
    List<String> lines =
        told(
            new AlignmentState(
                all.stands(), all.offsets(), List.of(advised), List.of(), List.of()));
    assertThat(lines)
        .filteredOn(line -> line.contains("says to check"))
        .singleElement()
        .asString()
        .endsWith("its document says to check: the heel");
  }
}
