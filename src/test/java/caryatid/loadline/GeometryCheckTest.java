package caryatid.loadline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.BadInput;
import caryatid.remark.Question;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.MeanLoad;
import caryatid.standing.Stance;
import caryatid.standing.Standing;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The limits are common practice and have no source. */
class GeometryCheckTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final Stance TWO = new Stance.PlatePerFoot("1", "2");

  private static Standing feet(double leftMm, double rightMm) {
    return Legs.standing(
        load(LoadLineOwner.LEFT_FOOT, leftMm), load(LoadLineOwner.RIGHT_FOOT, rightMm));
  }

  private static MeanLoad load(LoadLineOwner of, double rightMm) {
    return Legs.load(of, rightMm, 0, 400, 1, Optional.empty());
  }

  private static List<String> impossible(GeometryCheck check) {
    BadInput refused =
        catchThrowableOfType(
            BadInput.class, () -> check.requirePossible(Legs.how(TWO, Legs.NONE, Side.RIGHT)));
    return refused == null
        ? List.of()
        : refused.problems().stream().map(ENGLISH::say).map(s -> s.replace('\u00a0', ' ')).toList();
  }

  private static GeometryCheck past(Plane plane, LandmarkKind kind, boolean knee, double mm) {
    Offset offset =
        new Offset(
            new LandmarkInPlane(plane, Side.RIGHT, kind.name()),
            LoadLineOwner.RIGHT_FOOT,
            LoadLineMethod.VERTICAL,
            Estimate.exact(mm));
    return new GeometryCheck(
        feet(-110, 110),
        List.of(offset),
        List.of(Legs.mark(kind, Side.RIGHT, 0, 0, usualHeightMm(kind))),
        knee,
        GeometryLimits.USUAL);
  }

  private static double usualHeightMm(LandmarkKind kind) {
    return switch (kind) {
      case ANKLE_AXIS, FOOT_REFERENCE_POINT -> 80;
      case HIP -> 900;
      default -> 480;
    };
  }

  @ParameterizedTest
  @CsvSource({
    "SAGITTAL, ANKLE_AXIS, false, 0, 110, -80, 210",
    "SAGITTAL, KNEE_CENTRE, false, -10, 50, -80, 120",
    "SAGITTAL, KNEE_CENTRE, true, 0, 60, -80, 120",
    "SAGITTAL, HIP, false, -60, 60, -150, 150",
    "SAGITTAL, OTHER, false, -150, 150, -300, 300",
    "FRONTAL, KNEE_CENTRE, true, -45, 45, -100, 100",
    "FRONTAL, ANKLE_AXIS, false, -25, 25, -60, 60",
    "FRONTAL, FOOT_REFERENCE_POINT, false, -25, 25, -60, 60",
    "FRONTAL, OUTER_PATELLAR_BORDER, false, -95, -5, -150, 20",
    "FRONTAL, OTHER, false, -100, 100, -300, 300"
  })
  void anOffsetIsAskedAboutBeyondOneLimitAndRefusedBeyondTheOther(
      Plane plane,
      LandmarkKind kind,
      boolean knee,
      double askBelow,
      double askAbove,
      double refuseBelow,
      double refuseAbove) {
    for (double odd : new double[] {askBelow - 0.1, askAbove + 0.1}) {
      assertThat(past(plane, kind, knee, odd).questions(List.of(Side.RIGHT), "stand.csv"))
          .hasSize(1);
    }
    for (double usual : new double[] {askBelow, askAbove}) {
      assertThat(past(plane, kind, knee, usual).questions(List.of(Side.RIGHT), "stand.csv"))
          .isEmpty();
    }
    for (double not : new double[] {refuseBelow - 0.1, refuseAbove + 0.1}) {
      assertThat(impossible(past(plane, kind, knee, not))).hasSize(1);
    }
    for (double hardly : new double[] {refuseBelow, refuseAbove}) {
      assertThat(impossible(past(plane, kind, knee, hardly))).isEmpty();
    }
  }

  @Test
  void aQuestionNamesWhatWasMeasuredAndTheLineThatAnswersIt() {
    Question asked =
        past(Plane.SAGITTAL, LandmarkKind.ANKLE_AXIS, false, -1)
            .questions(List.of(), "stand.csv")
            .get(0);
    assertThat(asked.answer()).isEqualTo("ANKLE_AXIS right sagittal");
    assertThat(asked.at(caryatid.remark.Place.of("sheet.yaml")).arguments())
        .last()
        .isEqualTo(caryatid.remark.Argument.text("as-meant: ['ANKLE_AXIS right sagittal']"));
  }

  @Test
  void aLineBehindAProstheticKneeIsAskedAboutWithTheSafetyFirst() {
    Question asked =
        past(Plane.SAGITTAL, LandmarkKind.KNEE_CENTRE, true, -0.1)
            .questions(List.of(), "stand.csv")
            .get(0);
    assertThat(ENGLISH.say(asked.at(caryatid.remark.Place.of("sheet.yaml"))))
        .contains("The knee may bend. Seat the wearer")
        .contains("(stand.csv), behind the axis");
  }

  @Test
  void theClinicsOwnLimitsCount() {
    GeometryLimits own =
        new GeometryLimits(Map.of(LimitedQuantity.SAGITTAL_ANKLE, new Bounds(-20, 50, -30, 60)));
    assertThat(own.of(LimitedQuantity.SAGITTAL_ANKLE).isOdd(-19.9)).isFalse();
    assertThat(own.of(LimitedQuantity.SAGITTAL_ANKLE).isOdd(-20.1)).isTrue();
    assertThat(own.of(LimitedQuantity.HEEL_HEIGHT)).isEqualTo(LimitedQuantity.HEEL_HEIGHT.usual());
  }

  @Test
  void jointsMustRiseFromAnkleToHip() {
    assertThat(impossible(joints(LandmarkKind.ANKLE_AXIS, 390, 390)))
        .containsExactly(
            "sheet.yaml: expected joints one above the other, found KNEE_CENTRE at 390.0 mm and"
                + " ANKLE_AXIS at 390.0 mm. Check the heights and their unit.");
    assertThat(impossible(joints(LandmarkKind.ANKLE_AXIS, 390, 390.1))).isEmpty();
  }

  /** Taken down in cm, with a foot that has no ankle axis. */
  @ParameterizedTest
  @CsvSource({"true", "false"})
  void aKneeBelowTheFootReferencePointCannotBe(boolean prostheticKnee) {
    List<Landmark> marks =
        List.of(
            Legs.mark(LandmarkKind.FOOT_REFERENCE_POINT, Side.LEFT, 0, 0, 85),
            Legs.mark(LandmarkKind.HIP, Side.LEFT, 0, 0, 905),
            Legs.mark(LandmarkKind.KNEE_CENTRE, Side.LEFT, 0, 0, 50.5));
    assertThat(impossible(marks(marks, prostheticKnee)))
        .containsExactly(
            "sheet.yaml: expected joints one above the other, found KNEE_CENTRE at 50.5 mm and"
                + " FOOT_REFERENCE_POINT at 85.0 mm. Check the heights and their unit.");
  }

  @Test
  void anAnkleAxisMayLieAboveOrBelowTheFootReferencePoint() {
    for (double pointMm : new double[] {60, 80, 100}) {
      List<Landmark> marks =
          List.of(
              Legs.mark(LandmarkKind.ANKLE_AXIS, Side.LEFT, 0, 0, 80),
              Legs.mark(LandmarkKind.FOOT_REFERENCE_POINT, Side.LEFT, 0, 0, pointMm));
      assertThat(impossible(marks(marks, true))).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "ANKLE_AXIS, 30, 180, 10, 400",
    "KNEE_CENTRE, 300, 700, 100, 1000",
    "HIP, 550, 1150, 200, 1500"
  })
  void aHeightIsAskedAboutBeyondOneLimitAndRefusedBeyondTheOther(
      LandmarkKind kind, double askBelow, double askAbove, double refuseBelow, double refuseAbove) {
    for (double odd : new double[] {askBelow - 0.1, askAbove + 0.1}) {
      assertThat(marked(kind, odd).questions(List.of(Side.LEFT), "stand.csv")).hasSize(1);
    }
    for (double usual : new double[] {askBelow, askAbove}) {
      assertThat(marked(kind, usual).questions(List.of(Side.LEFT), "stand.csv")).isEmpty();
    }
    for (double not : new double[] {refuseBelow - 0.1, refuseAbove + 0.1}) {
      assertThat(impossible(marked(kind, not))).hasSize(1);
    }
    for (double hardly : new double[] {refuseBelow, refuseAbove}) {
      assertThat(impossible(marked(kind, hardly))).isEmpty();
    }
  }

  @Test
  void aHeightIsToldWithItsLimits() {
    assertThat(impossible(marked(LandmarkKind.KNEE_CENTRE, 50.5)))
        .containsExactly(
            "sheet.yaml: expected KNEE_CENTRE at a height from 100.0 mm to 1000.0 mm, found 50.5"
                + " mm. Check the height and its unit (mm).");
    Question asked =
        marked(LandmarkKind.KNEE_CENTRE, 250).questions(List.of(Side.LEFT), "stand.csv").get(0);
    assertThat(ENGLISH.say(asked.at(caryatid.remark.Place.of("sheet.yaml"))).replace('\u00a0', ' '))
        .isEqualTo(
            "sheet.yaml: KNEE_CENTRE was marked 250.0 mm up, outside 300.0 mm to 700.0 mm: was it"
                + " measured in mm, above the plate's top? Correct it; if it is right, add to the"
                + " sheet: as-meant: ['KNEE_CENTRE left up 250']");
    assertThat(asked.topic().holdsForSession()).isTrue();
  }

  private static GeometryCheck marked(LandmarkKind kind, double upMm) {
    return marks(List.of(Legs.mark(kind, Side.LEFT, 0, 0, upMm)), true);
  }

  private static GeometryCheck joints(LandmarkKind foot, double footUpMm, double kneeUpMm) {
    return marks(
        List.of(
            Legs.mark(foot, Side.LEFT, 0, 0, footUpMm),
            Legs.mark(LandmarkKind.KNEE_CENTRE, Side.LEFT, 0, 0, kneeUpMm),
            Legs.mark(LandmarkKind.KNEE_CENTRE, Side.RIGHT, 0, 0, 349)),
        true);
  }

  private static GeometryCheck marks(List<Landmark> marks, boolean prostheticKnee) {
    return new GeometryCheck(
        feet(-110, 110), List.of(), marks, prostheticKnee, GeometryLimits.USUAL);
  }

  @Test
  void feetCannotBeCloserOrFurtherApartThanAnybodyStands() {
    assertThat(impossible(apart(30))).isEmpty();
    assertThat(impossible(apart(500))).isEmpty();
    assertThat(impossible(apart(29.9))).hasSize(1);
    assertThat(impossible(apart(500.1)))
        .containsExactly(
            "sheet.yaml: the centres of pressure under the feet would lie 500.1 mm apart, and"
                + " nobody stands like that (possible: 30.0 mm to 500.0 mm). Check which cable and"
                + " which columns belong to which plate, and units and places in the plate"
                + " description.");
  }

  private static GeometryCheck apart(double mm) {
    return new GeometryCheck(feet(0, mm), List.of(), List.of(), true, GeometryLimits.USUAL);
  }
}
