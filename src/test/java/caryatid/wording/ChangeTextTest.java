package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.Foresight;
import caryatid.alignment.OffsetChange;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Target;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ChangeTextTest {
  private static final double KNOWN = Double.POSITIVE_INFINITY;
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final LandmarkInPlane KNEE =
      new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, "knee centre");

  private static Contribution part(Cause cause, double mm) {
    return new Contribution(new Source(cause, ""), mm, 1, KNOWN);
  }

  /** Half-widths 1.96 times 2 and 4 mm: 3.92 and 7.84; one and one stand. */
  private static List<String> lines(double changeMm, OptionalDouble intendedMm) {
    Estimate stayed = new Estimate(changeMm, List.of(part(Cause.REPEATABILITY, 2)));
    Estimate anew =
        new Estimate(
            changeMm, List.of(part(Cause.REPEATABILITY, 2), part(Cause.MARKING, Math.sqrt(12))));
    OffsetChange change =
        new OffsetChange(KNEE, LoadLineOwner.RIGHT_FOOT, 10, 10 + changeMm, stayed, anew, 0.5);
    return ChangeText.lines(List.of(change), true, intendedMm, ENGLISH).stream()
        .map(line -> line.replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void aChangeIsRealOrRealIfMarksStayedOrChance() {
    String head = "How the offsets changed (computed now, from the results kept with both states):";
    assertThat(lines(-8, OptionalDouble.empty()))
        .containsExactly(
            head,
            "sagittal, prosthetic knee axis (right), right foot's line: 10.0 mm anterior -> 2.0 mm"
                + " anterior, changed by 8.0 mm",
            "  a real change: it exceeds ± 3.9 mm (marks kept, feet in their outlines) and"
                + " ± 7.8 mm (landmarks marked again; same plate and shoe)");
    assertThat(lines(5, OptionalDouble.empty()).get(2))
        .isEqualTo(
            "  a real change only if the marks stayed and the feet stood in their outlines"
                + " (± 3.9 mm); if the landmarks were marked again, chance may explain it"
                + " (± 7.8 mm)");
    assertThat(lines(3, OptionalDouble.empty()))
        .endsWith(
            "  chance may explain it: ± 3.9 mm if the marks stayed and the feet stood in their"
                + " outlines, ± 7.8 mm if the landmarks were marked again",
            "  stands in each state that would show a change of 3.0 mm: 2 (marks kept, feet in"
                + " their outlines)");
  }

  @Test
  void goingBackIsSaidOrWhyItIsNot() {
    Estimate change = new Estimate(5, List.of(part(Cause.REPEATABILITY, 2)));
    OffsetChange both = new OffsetChange(KNEE, LoadLineOwner.RIGHT_FOOT, 10, 15, change, change, 1);
    assertThat(ChangeText.back(9, true, List.of(both), true, ENGLISH))
        .hasSize(3)
        .startsWith(
            "Compared with the mean of the first setting before the change and again after entry 9"
                + " (an even drift cancels; each ± is for this):");
    assertThat(ChangeText.back(9, true, List.of(), true, ENGLISH))
        .containsExactly(
            "The change is not judged against entry 9: this needs three states with stands whose"
                + " results can be read, on the same plate and in the same stance.");
    assertThat(ChangeText.back(9, false, List.of(both), true, ENGLISH))
        .containsExactly(
            "Settings or components after entry 9 are not those of the first state: the change is"
                + " not judged against both. Go back to the first setting, and stand again.");
  }

  /** 3.92 mm over root n: nine stands show 1.31 mm. */
  @Test
  void theSizeThatWasIntendedIsTaken() {
    assertThat(lines(8, OptionalDouble.of(1.4)))
        .endsWith(
            "  stands in each state that would show a change of 1.4 mm: 8 (marks kept, feet in"
                + " their outlines)");
    assertThat(lines(8, OptionalDouble.of(1.3)))
        .endsWith("  nine stands in each state would not show a change of 1.3 mm");
    assertThat(ChangeText.lines(List.of(), true, OptionalDouble.of(5), ENGLISH)).isEmpty();
  }

  /**
   * Tolerance 10 mm to either side, scatter 6 mm of one stand, marks 1 mm, all known: 11.9 mm of
   * one stand, never; 10 mm less 1.645 times 3.606 and 2.864 mm; 3.5 with better marks.
   */
  @Test
  void whatIsAheadIsSaidOfEachNumberOfStands() {
    Target target =
        new Target(
            KNEE, 15, 10, 10, "invented", Target.MeantFor.FOOT, Optional.empty(), Optional.empty());
    Foresight ahead =
        new Foresight(
            target,
            0.95,
            part(Cause.REPEATABILITY, 6),
            new Estimate(0, List.of(part(Cause.MARKING, 1))));
    List<String> lines =
        ForesightText.lines(List.of(ahead), false, ENGLISH).stream()
            .map(line -> line.replace('\u00a0', ' '))
            .toList();
    assertThat(lines.get(1))
        .matches(
            "sagittal, knee centre \\(right\\), tolerance ± 10\\.0 mm: one stand cannot show it"
                + " met, three stands will show it met within 4\\.[01] mm of the middle, five"
                + " stands will show it met within 5\\.[23] mm of the middle, three stands with"
                + " landmarks marked twice as precisely will show it met within 4\\.2 mm of the"
                + " middle");
    assertThat(lines).hasSize(2);
    assertThat(ForesightText.lines(List.of(), false, ENGLISH)).isEmpty();
  }
}
