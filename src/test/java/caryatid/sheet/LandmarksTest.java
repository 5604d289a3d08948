package caryatid.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import caryatid.geometry.Side;
import caryatid.loadline.Coordinate;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkKind;
import caryatid.recording.model.MeasuringLine;
import caryatid.recording.model.MeasuringLine.Sense;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.sheet.LandmarkEntry.MeasuredDistance;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Source;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Landmarks in the person's frame; the numbers are sums done by hand (validation). */
class LandmarksTest {
  private static final Place SHEET = Place.of("sheet.yaml");
  private static final List<MeasuringLine> LINES =
      List.of(
          new MeasuringLine("rear edge", Sense.FORWARD, -300, 1),
          new MeasuringLine("midline", Sense.RIGHTWARD, 5, 0.5));

  private static LandmarkEntry entry(
      String name,
      Side side,
      Optional<MeasuredDistance> forward,
      Optional<MeasuredDistance> rightward) {
    return new LandmarkEntry(
        name, LandmarkKind.OTHER, side, forward, rightward, 80, Optional.of("edge"));
  }

  private static Optional<MeasuredDistance> fromLine(double mm, String line) {
    return Optional.of(new MeasuredDistance(mm, Optional.of(line), false, 3));
  }

  private static Optional<MeasuredDistance> fromLandmark(double mm, String landmark) {
    return Optional.of(new MeasuredDistance(mm, Optional.of(landmark), true, 4));
  }

  private static Contribution doubt(Cause cause, String of, double u) {
    return new Contribution(new Source(cause, of), u, 1, 8);
  }

  private static List<String> problems(LandmarkEntry... entries) {
    return Sheets.said(
        catchThrowableOfType(
            BadInput.class, () -> Landmarks.place(List.of(entries), LINES, SHEET)));
  }

  @Test
  void distancesCountFromTheirLines() throws BadInput {
    LandmarkEntry ankle =
        entry("ankle", Side.RIGHT, fromLine(340, "rear edge"), fromLine(12, "midline"));
    assertThat(Landmarks.place(List.of(ankle), LINES, SHEET))
        .containsExactly(
            new Landmark(
                "ankle",
                LandmarkKind.OTHER,
                Side.RIGHT,
                Optional.of(
                    new Coordinate(
                        17,
                        List.of(
                            doubt(Cause.REGISTRATION, "midline", 0.5),
                            doubt(Cause.MARKING, "ankle right frontal", 3)))),
                Optional.of(
                    new Coordinate(
                        40,
                        List.of(
                            doubt(Cause.REGISTRATION, "rear edge", 1),
                            doubt(Cause.MARKING, "ankle right sagittal", 3)))),
                80,
                Optional.of("edge")));
  }

  @Test
  void withoutALineDistancesCountFromTheOrigin() throws BadInput {
    LandmarkEntry ankle =
        entry(
            "ankle",
            Side.LEFT,
            Optional.of(new MeasuredDistance(7, Optional.empty(), false, 2)),
            Optional.empty());
    Landmark placed = Landmarks.place(List.of(ankle), List.of(), SHEET).get(0);
    assertThat(placed.rightMm()).isEmpty();
    assertThat(placed.anteriorMm())
        .contains(new Coordinate(7, List.of(doubt(Cause.MARKING, "ankle left sagittal", 2))));
  }

  @Test
  void aRelativeLandmarkInheritsPlaceAndDoubts() throws BadInput {
    LandmarkEntry hip = entry("hip", Side.LEFT, fromLandmark(-5, "knee"), Optional.empty());
    LandmarkEntry knee = entry("knee", Side.LEFT, fromLandmark(22, "ankle"), Optional.empty());
    LandmarkEntry ankle = entry("ankle", Side.LEFT, fromLine(340, "rear edge"), Optional.empty());
    LandmarkEntry otherAnkle =
        entry("ankle", Side.RIGHT, fromLine(350, "rear edge"), Optional.empty());
    List<Landmark> placed = Landmarks.place(List.of(hip, knee, otherAnkle, ankle), LINES, SHEET);
    assertThat(placed.get(0).anteriorMm())
        .contains(
            new Coordinate(
                57,
                List.of(
                    doubt(Cause.REGISTRATION, "rear edge", 1),
                    doubt(Cause.MARKING, "ankle left sagittal", 3),
                    doubt(Cause.MARKING, "knee left sagittal", 4),
                    doubt(Cause.MARKING, "hip left sagittal", 4))));
    assertThat(placed.get(1).anteriorMm().orElseThrow().mm()).isEqualTo(62);
  }

  @Test
  void aLineThatIsNotThereIsRefused() {
    assertThat(problems(entry("ankle", Side.LEFT, fromLine(1, "heel line"), Optional.empty())))
        .containsExactly(
            "sheet.yaml: the landmark 'ankle' is measured from the line 'heel line', which the"
                + " plate description does not have. Correct the name, or add the line under"
                + " `measuring-lines` in the plate description.");
    assertThat(problems(entry("ankle", Side.LEFT, fromLine(1, "rear-edge"), Optional.empty())))
        .containsExactly(
            "sheet.yaml: the landmark 'ankle' is measured from the line 'rear-edge', which the"
                + " plate description does not have; did you mean 'rear edge'?");
  }

  @Test
  void aLineOfTheOtherDirectionIsRefused() {
    assertThat(problems(entry("ankle", Side.LEFT, fromLine(1, "midline"), Optional.empty())))
        .containsExactly(
            "sheet.yaml: the landmark 'ankle' is measured from the line 'midline' in a direction"
                + " the plate description does not give for it. Use a line with `forward-from-mm`"
                + " for `forward-from`, one with `rightward-from-mm` for `rightward-from`.");
  }

  @Test
  void landmarksInACircleAreRefused() {
    assertThat(
            problems(
                entry("a", Side.LEFT, fromLandmark(1, "b"), Optional.empty()),
                entry("b", Side.LEFT, fromLandmark(1, "a"), Optional.empty()),
                entry("c", Side.LEFT, fromLandmark(1, "a"), Optional.empty())))
        .containsExactly(
            "sheet.yaml: the landmark 'a' is measured from 'b', which in the end is measured from"
                + " 'a' itself. Measure one of them from a line.",
            "sheet.yaml: the landmark 'b' is measured from 'a', which in the end is measured from"
                + " 'b' itself. Measure one of them from a line.");
  }

  @Test
  void aLandmarkOfTheOtherSideOrThePlaneLeftOutIsNoReference() {
    assertThat(
            problems(
                entry("ankle", Side.LEFT, fromLine(1, "rear edge"), Optional.empty()),
                entry("knee", Side.RIGHT, fromLandmark(1, "ankle"), Optional.empty()),
                entry("hip", Side.LEFT, Optional.empty(), fromLandmark(1, "ankle"))))
        .containsExactly(
            "sheet.yaml: the landmark 'knee' is measured from 'ankle', which is not in the sheet on"
                + " that side. Correct the name after `landmark`, or add that landmark.",
            "sheet.yaml: the landmark 'hip' is measured from 'ankle', which was not measured in"
                + " that plane (frontal). Measure that one too, or measure 'hip' from a line.");
  }
}
