package caryatid.calibration;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.EarlierState;
import caryatid.alignment.StateAnalysis;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.LoadLineCheck;
import caryatid.loadline.Target;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.samples.Noise;
import caryatid.samples.Person;
import caryatid.samples.Stand;
import caryatid.sheet.LandmarkEntry;
import caryatid.sheet.Landmarks;
import caryatid.sheet.TrialSheet;
import caryatid.standing.StandAnalysis;
import caryatid.standing.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A simulated wearer whose prosthesis can be set otherwise. They sway, and are measured through the
 * program's public entry points, as in {@link Fitting}; the plate's errors stay from state to
 * state, the landmarks are marked and the feet put down anew in each.
 */
final class AlignedWearer {
  static final String ANKLE = "ankle axis";
  static final double ANKLE_UP_MM = 80;

  /** Recommended offsets and tolerances to either side: knee sagittal, ankle sagittal, frontal. */
  static final List<Target> WHERE =
      List.of(
          target(Plane.SAGITTAL, Sheet.KNEE, 15, 15),
          target(Plane.SAGITTAL, ANKLE, 50, 15),
          target(Plane.FRONTAL, Sheet.KNEE, 0, 10));

  private static final double[] FIRST_SD_MM = {25, 15, 18};
  private static final Clinic CLINIC = new Clinic(50, 20, 3, 1);

  private final Wearer wearer;
  private final Errors plate;
  private final Responses responses;
  private final double[] firstMm;
  private final long seed;

  private AlignedWearer(Family family, long seed) {
    this.seed = seed;
    Noise noise = new Noise(seed);
    wearer = Wearer.draw(family, noise.split());
    plate = Errors.draw(noise.split());
    responses = Responses.draw(noise.split());
    firstMm = first(noise.split());
  }

  /**
   * The wearer of a seed; at first at least one offset is truly outside. One whom no setting within
   * travel brings within by as much as a landmark is marked well, 3 mm, or whose first recordings
   * are refused, is drawn anew: nothing that is turned can tell two strategies apart there. (This
   * was added after runs with other seeds, in which 8 of 60 wearers could not be brought within by
   * anything, and half of those who were left at the end only by a last millimetre of every screw.)
   */
  static AlignedWearer of(Family family, long seed) {
    AlignedWearer wearer = new AlignedWearer(family, seed);
    for (long anew = 1; !wearer.canBeJudged(); anew++) {
      wearer = new AlignedWearer(family, seed + anew * 1_000_000_000L);
    }
    return wearer;
  }

  private boolean canBeJudged() {
    return isReachable(new double[Screw.values().length], 0)
        && measure(new double[Screw.values().length], 0, List.of()).isPresent();
  }

  private boolean isReachable(double[] settings, int from) {
    if (from == settings.length) {
      return isWellWithin(trueMm(settings));
    }
    Screw screw = Screw.values()[from];
    int most = (int) StrictMath.round(screw.travel() / screw.step());
    for (int i = -most; i <= most; i++) {
      settings[from] = i * screw.step();
      if (isReachable(settings, from + 1)) {
        return true;
      }
    }
    return false;
  }

  private static double[] first(Noise noise) {
    double[] mm = new double[WHERE.size()];
    do {
      for (int offset = 0; offset < mm.length; offset++) {
        mm[offset] = WHERE.get(offset).recommendedMm() + FIRST_SD_MM[offset] * noise.normal();
      }
    } while (beyondMm(mm) == 0);
    return mm;
  }

  private static double beyondMm(double[] mm) {
    double most = 0;
    for (int offset = 0; offset < mm.length; offset++) {
      most = StrictMath.max(most, beyondMm(offset, mm[offset]));
    }
    return most;
  }

  /** How far an offset is outside its tolerance, mm; 0 within. */
  static double beyondMm(int offset, double mm) {
    Target target = WHERE.get(offset);
    return StrictMath.max(0, StrictMath.max(target.lowestMm() - mm, mm - target.highestMm()));
  }

  private static boolean isWellWithin(double[] mm) {
    for (int offset = 0; offset < mm.length; offset++) {
      if (beyondMm(offset, mm[offset] - Clinic.MARKING_MM) > 0
          || beyondMm(offset, mm[offset] + Clinic.MARKING_MM) > 0) {
        return false;
      }
    }
    return true;
  }

  /** The true offsets at settings, mm. */
  double[] trueMm(double[] settings) {
    double[] mm = firstMm.clone();
    for (int offset = 0; offset < mm.length; offset++) {
      mm[offset] += responses.sum(settings, offset);
    }
    return mm;
  }

  /** Whether all targets truly lie within. */
  boolean within(double[] settings) {
    return beyondMm(trueMm(settings)) == 0;
  }

  /**
   * Three stands at settings; empty where a recording was refused.
   *
   * @param visit the how manieth state, which draws other stands
   */
  Optional<AlignmentState> measure(double[] settings, int visit, List<EarlierState> before) {
    Noise noise = new Noise(seed * 1000 + 7919L * (visit + 1));
    Errors errors = again(Errors.draw(noise.split()));
    double[] ankleMark = Errors.draw(noise.split()).markMm();
    List<Stand> stands = new ArrayList<>();
    for (int i = 0; i < CLINIC.stands(); i++) {
      double[] away = {noise.normal(), noise.normal()};
      Person now = wearer.thisTime(away, CLINIC.restless());
      stands.add(Stand.of(now, CLINIC.samples(), CLINIC.rateHz(), noise.split()));
    }
    try {
      return Optional.of(state(stands, trueMm(settings), errors, ankleMark, before));
    } catch (BadInput refused) {
      return Optional.empty();
    }
  }

  /** The plate's errors of the first state with marks and a turn of this one. */
  private Errors again(Errors now) {
    return new Errors(
        plate.copMm(),
        plate.forceFraction(),
        plate.tilt(),
        now.yawRad(),
        now.markMm(),
        now.swingAt());
  }

  private AlignmentState state(
      List<Stand> stands, double[] mm, Errors errors, double[] ankleMark, List<EarlierState> before)
      throws BadInput {
    TrialSheet sheet = sheet(stands.get(0), mm, errors, ankleMark);
    List<Landmark> landmarks =
        Landmarks.place(sheet.landmarks(), Sheet.LINES, Place.of("simulated"));
    List<caryatid.alignment.Stand> measured = new ArrayList<>();
    for (Stand stand : stands) {
      Recording recording = Measured.recording(stand, CLINIC.plates(), errors);
      Standing standing =
          StandAnalysis.analyse(
              recording,
              new StandAnalysis.Conditions(
                  sheet.stance(),
                  List.of(Side.RIGHT),
                  OptionalDouble.empty(),
                  Clinic.ACCURACY,
                  Optional.empty()));
      var past = LoadLineCheck.evaluate(standing, landmarks, Sheet.circumstances(CLINIC));
      measured.add(
          new caryatid.alignment.Stand(
              Measured.NOWHERE,
              Measured.NOWHERE,
              Optional.empty(),
              sheet,
              landmarks,
              standing,
              past.offsets(),
              past.moments(),
              past.remarks()));
    }
    return StateAnalysis.of(measured, Clinic.DOUBTS, before);
  }

  private TrialSheet sheet(Stand stand, double[] mm, Errors errors, double[] ankleMark) {
    double x = wearer.person().right().rightMm();
    double y = wearer.person().right().anteriorMm();
    double[] knee = {x - mm[2], y - mm[0], Wearer.KNEE_UP_MM};
    double[] ankle = {x, y - mm[1], ANKLE_UP_MM};
    return Sheet.of(
        CLINIC,
        List.of(
            entry(
                Sheet.KNEE,
                LandmarkKind.KNEE_CENTRE,
                seen(knee, stand, errors, errors.markMm()),
                knee[2]),
            entry(ANKLE, LandmarkKind.ANKLE_AXIS, seen(ankle, stand, errors, ankleMark), ankle[2])),
        WHERE);
  }

  /** Where a landmark was read: turned with the wearer, tilted, swinging, marked wrongly. */
  private static double[] seen(double[] at, Stand stand, Errors errors, double[] markMm) {
    double cos = StrictMath.cos(errors.yawRad());
    double sin = StrictMath.sin(errors.yawRad());
    int moment = (int) (errors.swingAt() * stand.whole().size());
    double swing = at[2] / Clinic.DOUBTS.pendulumMm();
    double right = stand.whole().rightMm()[moment] - stand.person().rightMm();
    double anterior = stand.whole().anteriorMm()[moment] - stand.person().anteriorMm();
    return new double[] {
      cos * at[0] - sin * at[1] + errors.tilt()[0] * at[2] + markMm[0] + swing * right,
      sin * at[0] + cos * at[1] + errors.tilt()[1] * at[2] + markMm[1] + swing * anterior
    };
  }

  private static LandmarkEntry entry(
      String name, LandmarkKind kind, double[] seen, double heightMm) {
    return new LandmarkEntry(
        name,
        kind,
        Side.RIGHT,
        Optional.of(Sheet.from("rear", seen[1] + 300)),
        kind == LandmarkKind.KNEE_CENTRE
            ? Optional.of(Sheet.from("midline", seen[0]))
            : Optional.empty(),
        heightMm,
        Optional.empty());
  }

  private static Target target(
      Plane plane, String landmark, double recommendedMm, double toleranceMm) {
    return new Target(
        new LandmarkInPlane(plane, Side.RIGHT, landmark),
        recommendedMm,
        toleranceMm,
        toleranceMm,
        "simulated",
        Target.MeantFor.FOOT,
        Optional.empty(),
        Optional.empty());
  }
}
