package caryatid.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.AssumedUncertainties;
import caryatid.loadline.Coordinate;
import caryatid.loadline.Finding;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.Legs;
import caryatid.loadline.StanceConditions;
import caryatid.loadline.Target;
import caryatid.recording.model.PlateAccuracy;
import caryatid.remark.BadInput;
import caryatid.standing.Made;
import caryatid.standing.Stance;
import caryatid.standing.StandAnalysis;
import caryatid.standing.Standing;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Conformity;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Quantiles;
import caryatid.uncertainty.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The worked example of {@code docs/method.md}: the program's numbers against the same ones
 * computed here step by step from the formulas of that page, and the page against both. {@code
 * -Dapprove} writes the example's table anew.
 */
class WorkedExampleTest {
  private static final Path PAGE = Path.of("docs/method.md");
  private static final String BEGIN = "<!-- worked example: begin -->\n";
  private static final String END = "<!-- worked example: end -->\n";
  private static final double[] ANTERIOR = {38, 41, 40, 43, 42, 40, 37, 39, 40, 42, 39, 39};
  private static final double[] RIGHT = {86, 87, 86, 85, 86, 88, 87, 86, 85, 84, 85, 87};
  private static final double[] FORCE = {
    398, 402, 400, 407, 399, 400, 396, 398, 400, 403, 401, 400
  };

  /** Of what is stated or assumed (JCGM 100:2008, G.4.2, example). */
  private static final double STATED = 8;

  private static final double HEIGHT = 490;

  private final List<String> rows = new ArrayList<>();

  private static Standing standing(double shiftMm) throws BadInput {
    StandAnalysis.Conditions conditions =
        new StandAnalysis.Conditions(
            new Stance.ProstheticFootOnPlate(Optional.empty()),
            List.of(Side.RIGHT),
            OptionalDouble.empty(),
            PlateAccuracy.ASSUMED,
            Optional.empty());
    return StandAnalysis.analyse(
        Made.at(2, 6)
            .plate("plate 1", i -> RIGHT[i], i -> ANTERIOR[i] + shiftMm, i -> FORCE[i])
            .recording(),
        conditions);
  }

  private static AlignmentState state(double... shiftsMm) throws BadInput {
    Landmark knee =
        new Landmark(
            LandmarkKind.KNEE_CENTRE.name(),
            LandmarkKind.KNEE_CENTRE,
            Side.RIGHT,
            Optional.of(new Coordinate(80, List.of())),
            Optional.of(
                new Coordinate(28, List.of(doubt(Cause.MARKING, 3), doubt(Cause.REGISTRATION, 1)))),
            HEIGHT,
            Optional.empty());
    Target target = Legs.target(Plane.SAGITTAL, LandmarkKind.KNEE_CENTRE, 15, 15, 15);
    StanceConditions how = Legs.rightFoot(AssumedUncertainties.ASSUMED);
    List<Stand> stands = new ArrayList<>();
    for (double shift : shiftsMm) {
      stands.add(Stands.of(standing(shift), knee, how, target));
    }
    return StateAnalysis.of(stands, AssumedUncertainties.ASSUMED);
  }

  private static Contribution doubt(Cause cause, double mm) {
    return new Contribution(new Source(cause, "knee"), mm, -1, STATED);
  }

  @Test
  void theProgramThePageAndTheFormulasAgree() throws BadInput, IOException {
    AlignmentState one = state(0);
    AlignmentState three = state(0, 2, -1);
    double swayMm = swayByHand();
    oneStand(one, swayMm);
    threeStands(three);
    String page = Files.readString(PAGE);
    int from = page.indexOf(BEGIN) + BEGIN.length();
    int to = page.indexOf(END);
    String table = "| step | number |\n|---|---|\n" + String.join("", rows);
    if (Boolean.getBoolean("approve")) {
      Files.writeString(PAGE, page.substring(0, from) + table + page.substring(to));
    }
    assertThat(Files.readString(PAGE).substring(from)).startsWith(table + END);
  }

  /** The mean and its error, straight from the formulas. */
  private double swayByHand() {
    int n = ANTERIOR.length;
    double moment = 0;
    double force = 0;
    for (int i = 0; i < n; i++) {
      moment += FORCE[i] * ANTERIOR[i];
      force += FORCE[i];
    }
    double mean = moment / force;
    double[] residuals = new double[n];
    for (int i = 0; i < n; i++) {
      residuals[i] = FORCE[i] * (ANTERIOR[i] - mean) / (force / n);
    }
    double c1 = cosine(residuals, 1);
    double c2 = cosine(residuals, 2);
    double size = effective(residuals);
    double level1 = 1 / (1 + Math.pow(Math.PI / size, 2));
    double level2 = 1 / (1 + Math.pow(2 * Math.PI / size, 2));
    double u = Math.sqrt(2 * (c1 * c1 + c2 * c2) / (level1 + level2)) / n;
    row("force-weighted mean, anterior", "%.4f mm", mean);
    row("cosine sums C1, C2 of the residuals", "%.4f mm, %.4f mm", c1, c2);
    row("effective size N", "%.4f", size);
    row("levels L1, L2", "%.4f, %.4f", level1, level2);
    row("sway: standard uncertainty of the mean, 2 degrees of freedom", "%.4f mm", u);
    return u;
  }

  private static double cosine(double[] residuals, int j) {
    double sum = 0;
    for (int t = 0; t < residuals.length; t++) {
      sum += residuals[t] * Math.cos(Math.PI * j * (t + 0.5) / residuals.length);
    }
    return sum;
  }

  private static double effective(double[] residuals) {
    int n = residuals.length;
    double sum = 0;
    for (int k = 1; k < n; k++) {
      double rho = products(residuals, k) / products(residuals, 0);
      if (rho <= 0) {
        break;
      }
      sum += (1 - (double) k / n) * rho;
    }
    return n / (1 + 2 * sum);
  }

  private static double products(double[] residuals, int lag) {
    double sum = 0;
    for (int i = 0; i + lag < residuals.length; i++) {
      sum += residuals[i] * residuals[i + lag];
    }
    return sum;
  }

  private void movement(Estimate mm, double effectiveSize) {
    double degrees = degrees(mm, Cause.LANDMARK_MOVEMENT);
    assertThat(1 / degrees).isCloseTo(1 / effectiveSize + 2 * 0.26 * 0.26, within(1e-12));
    row(
        "landmark movement, of which one foot shows 0.7",
        "%.4f mm",
        part(mm, Cause.LANDMARK_MOVEMENT));
    row("effective size N of the path; its degrees", "%.4f; %.4f", effectiveSize, degrees);
  }

  private void oneStand(AlignmentState state, double swayMm) {
    Finding finding = state.findings().get(0);
    Estimate mm = finding.offset().mm();
    Estimate alone = state.stands().get(0).offsets().get(0).mm();
    assertThat(part(alone, Cause.SWAY)).isCloseTo(swayMm, within(1e-9));
    assertThat(part(mm, Cause.SWAY)).isZero();
    row("offset from the knee centre at 28 mm", "%.4f mm", mm.value());
    row("plate accuracy", "%.4f mm", part(mm, Cause.PLATE_ACCURACY));
    row(
        "marking; registration",
        "%.4f mm; %.4f mm",
        part(mm, Cause.MARKING),
        part(mm, Cause.REGISTRATION));
    row("level, 2 mrad times 490 mm", "%.4f mm", part(mm, Cause.LEVEL));
    assertThat(part(mm, Cause.LEVEL)).isCloseTo(0.002 * HEIGHT, within(1e-12));
    double acrossMm =
        state.stands().get(0).standing().loads().get(0).copRightMm().orElseThrow().value() - 80;
    assertThat(part(mm, Cause.YAW)).isCloseTo(Math.toRadians(3) * acrossMm, within(1e-9));
    row(
        "yaw, 3 deg times the lever sideways",
        "%.4f rad x %.4f mm = %.4f mm",
        Math.toRadians(3),
        acrossMm,
        part(mm, Cause.YAW));
    movement(mm, state.stands().get(0).standing().sway().get(0).effectiveAnterior());
    row("repeatability, usual, 5 degrees of freedom", "%.4f mm", part(mm, Cause.REPEATABILITY));
    assertThat(part(mm, Cause.REPEATABILITY)).isEqualTo(5.5);
    double u = 0;
    for (Contribution c : mm.contributions()) {
      u += c.amount() * c.amount();
    }
    assertThat(mm.standardUncertainty()).isCloseTo(Math.sqrt(u), within(1e-12));
    for (Cause cause :
        List.of(Cause.PLATE_ACCURACY, Cause.MARKING, Cause.REGISTRATION, Cause.LEVEL, Cause.YAW)) {
      assertThat(degrees(mm, cause)).isEqualTo(STATED);
    }
    row(
        "t for 95 %: repeatability, landmark movement, the rest",
        "%.4f, %.4f, %.4f",
        Quantiles.t(0.975, 5),
        Quantiles.t(0.975, degrees(mm, Cause.LANDMARK_MOVEMENT)),
        Quantiles.t(0.975, STATED));
    outcome("one stand", finding);
  }

  private void threeStands(AlignmentState state) {
    Finding finding = state.findings().get(0);
    Estimate mm = finding.offset().mm();
    // Shifts of 0, 2 and -1 mm: their variance is 14 / 3 / 2, with two degrees of freedom.
    double repeat = Math.sqrt((5 * 5.5 * 5.5 + 14.0 / 3) / 7 / 3);
    assertThat(part(mm, Cause.REPEATABILITY)).isCloseTo(repeat, within(1e-9));
    assertThat(degrees(mm, Cause.REPEATABILITY)).isEqualTo(7);
    row("three stands shifted by 0, 2 and -1 mm: offset", "%.4f mm", mm.value());
    row("their own variance, 2 degrees of freedom", "%.4f mm²", 14.0 / 3 / 2);
    row("their repeatability, 7 degrees of freedom", "%.4f mm", part(mm, Cause.REPEATABILITY));
    outcome("three stands", finding);
    double differenceMm = state.offsets().get(0).smallestDifferenceMm();
    assertThat(differenceMm).isCloseTo(smallestDifference(mm), within(1e-9));
    row("smallest difference that counts", "%.4f mm", differenceMm);
  }

  /** By the page's formula. */
  private static double smallestDifference(Estimate mm) {
    return Math.sqrt(2)
        * halfWidth(
            mm, Set.of(Cause.REPEATABILITY, Cause.MARKING, Cause.YAW, Cause.LANDMARK_MOVEMENT));
  }

  private static double halfWidth(Estimate mm, Set<Cause> causes) {
    double squares = 0;
    for (Contribution c : mm.contributions()) {
      if (causes.contains(c.source().cause())) {
        squares += Math.pow(Quantiles.t(0.975, c.degreesOfFreedom()) * c.amount(), 2);
      }
    }
    return Math.sqrt(squares);
  }

  private static double degrees(Estimate mm, Cause cause) {
    return mm.contributions().stream()
        .filter(c -> c.source().cause() == cause)
        .findFirst()
        .orElseThrow()
        .degreesOfFreedom();
  }

  private void outcome(String what, Finding finding) {
    Estimate mm = finding.offset().mm();
    double u = mm.standardUncertainty();
    double degrees = mm.degreesOfFreedom();
    double t = Quantiles.t(0.975, degrees);
    row(what + ": combined standard uncertainty", "%.4f mm", u);
    row(what + ": degrees of freedom that one t would need; that t", "%.4f; %.4f", degrees, t);
    row(what + ": degrees by Welch-Satterthwaite", "%.4f", mm.welchSatterthwaite());
    double half = halfWidth(mm, Set.of(Cause.values()));
    row(what + ": half-width of the 95 % interval", "%.4f mm", half);
    assertThat(mm.expanded(0.95)).isCloseTo(half, within(1e-12));
    assertThat(t * u).isCloseTo(half, within(1e-6));
    Conformity all = Conformity.of(mm, 0, 30);
    row(
        what + ": probability below, within, above 0 to 30 mm",
        "%.4f, %.4f, %.4f",
        all.below(),
        all.within(),
        all.above());
    row(what + ": result", finding.verdict().name());
  }

  private static double part(Estimate mm, Cause cause) {
    return mm.contributions().stream()
        .filter(c -> c.source().cause() == cause)
        .mapToDouble(c -> Math.abs(c.amount()))
        .sum();
  }

  private void row(String step, String format, Object... numbers) {
    String number = numbers.length == 0 ? format : String.format(Locale.ROOT, format, numbers);
    rows.add("| " + step + " | " + number.replace("-", "\u2212") + " |\n");
  }
}
