package caryatid.calibration;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.EarlierState;
import caryatid.alignment.StateAnalysis;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Landmark;
import caryatid.loadline.LoadLineCheck;
import caryatid.loadline.LoadLineResult;
import caryatid.loadline.ReadMoments;
import caryatid.loadline.Target;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.samples.FootTrace;
import caryatid.samples.Noise;
import caryatid.samples.Person;
import caryatid.samples.Stand;
import caryatid.sheet.Landmarks;
import caryatid.sheet.TrialSheet;
import caryatid.standing.Leaning;
import caryatid.standing.StandAnalysis;
import caryatid.standing.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One simulated fitting through the program's public entry points, from recordings and a sheet to
 * findings: {@link StandAnalysis}, {@link Landmarks}, {@link LoadLineCheck}, {@link StateAnalysis}.
 */
final class Fitting {
  private final Clinic clinic;
  private final Wearer wearer;
  private final Errors errors;
  private final List<Stand> stands;
  private final List<List<Stand>> earlier = new ArrayList<>();

  private Fitting(Family family, Clinic clinic, Noise noise) {
    this.clinic = clinic;
    this.wearer = Wearer.draw(family, noise.split());
    this.errors = Errors.draw(noise.split());
    this.stands = stands(clinic.stands(), noise);
    clinic.earlier().forEach(count -> earlier.add(stands(count, noise.split())));
  }

  /** The stands of one state. */
  private List<Stand> stands(int count, Noise noise) {
    List<Stand> made = new ArrayList<>();
    double[] session = clinic.sessionMm() == 0 ? new double[2] : normals(noise.split());
    double[] before = {0, 0};
    double fresh = 1;
    for (int i = 0; i < count; i++) {
      double[] away = normals(noise.split());
      for (int axis = 0; axis < 2; axis++) {
        before[axis] = (i == 0 ? 0 : clinic.serial() * before[axis]) + fresh * away[axis];
      }
      fresh = StrictMath.sqrt(1 - clinic.serial() * clinic.serial());
      double feetMm = i == 0 ? 0 : clinic.putBackMm();
      Noise feet = noise.split();
      Person stood =
          wearer
              .thisTime(before, clinic.restless())
              .movedBy(clinic.sessionMm() * session[0], clinic.sessionMm() * session[1])
              .movedBy(feetMm * feet.normal(), feetMm * feet.normal());
      made.add(Stand.of(stood, clinic.samples(), clinic.rateHz(), noise.split()));
    }
    return made;
  }

  private static double[] normals(Noise noise) {
    return new double[] {noise.normal(), noise.normal()};
  }

  /** Draws a wearer and errors, measures, and says what came out against the truth. */
  static List<Outcome> run(Family family, Clinic clinic, Noise noise) {
    Fitting fitting = new Fitting(family, clinic, noise);
    Noise targets = noise.split();
    List<Aim> aims =
        List.of(
            Aim.at(Plane.SAGITTAL, fitting.wearer.sagittalMm(), targets),
            Aim.at(Plane.FRONTAL, fitting.wearer.frontalMm(), targets));
    try {
      AlignmentState state =
          fitting.state(aims.stream().flatMap(a -> a.targets().stream()).toList());
      return aims.stream().map(aim -> Outcome.of(state, aim)).toList();
    } catch (BadInput refused) {
      return List.of();
    }
  }

  /**
   * Its states in order, each knowing those before it; the offsets of all of them truly the same.
   * Empty where a stand was refused.
   */
  static List<AlignmentState> states(Family family, Clinic clinic, Noise noise) {
    Fitting fitting = new Fitting(family, clinic, noise);
    List<List<Stand>> all = new ArrayList<>(fitting.earlier);
    all.add(fitting.stands);
    try {
      List<EarlierState> before = new ArrayList<>();
      List<AlignmentState> states = new ArrayList<>();
      for (List<Stand> stands : all) {
        TrialSheet sheet = fitting.sheet(List.of(), stands.get(0));
        List<Landmark> landmarks = fitting.landmarks(sheet, stands.get(0));
        AlignmentState state =
            StateAnalysis.of(fitting.measured(stands, sheet, landmarks), Clinic.DOUBTS, before);
        states.add(state);
        before.add(EarlierState.of(state, Measured.NOWHERE.sha512()));
      }
      return states;
    } catch (BadInput refused) {
      return List.of();
    }
  }

  private AlignmentState state(List<Target> targets) throws BadInput {
    TrialSheet sheet = sheet(targets, stands.get(0));
    List<Landmark> landmarks = landmarks(sheet, stands.get(0));
    List<EarlierState> before = new ArrayList<>();
    for (List<Stand> state : earlier) {
      AlignmentState then = StateAnalysis.of(measured(state, sheet, landmarks), Clinic.DOUBTS);
      before.add(EarlierState.of(then, Measured.NOWHERE.sha512()));
    }
    return StateAnalysis.of(measured(stands, sheet, landmarks), Clinic.DOUBTS, before);
  }

  /** In the person's frame; freed from the swing where the clinic notes the moment. */
  private List<Landmark> landmarks(TrialSheet sheet, Stand readIn) throws BadInput {
    List<Landmark> read = Landmarks.place(sheet.landmarks(), Sheet.LINES, Place.of("simulated"));
    if (!clinic.readsAt()) {
      return read;
    }
    Recording first = Measured.recording(readIn, clinic.plates(), errors);
    double atS = errors.swingAt() * (clinic.samples() - 1) / clinic.rateHz();
    Leaning leaning = Leaning.at(first, conditions(sheet), analysed(first, sheet), List.of(atS));
    return read.stream().map(mark -> ReadMoments.swungBack(mark, leaning, Clinic.DOUBTS)).toList();
  }

  private List<caryatid.alignment.Stand> measured(
      List<Stand> state, TrialSheet sheet, List<Landmark> landmarks) throws BadInput {
    List<caryatid.alignment.Stand> measured = new ArrayList<>();
    for (Stand stand : state) {
      measured.add(measured(stand, sheet, landmarks));
    }
    return measured;
  }

  private caryatid.alignment.Stand measured(Stand stand, TrialSheet sheet, List<Landmark> landmarks)
      throws BadInput {
    Recording recording = Measured.recording(stand, clinic.plates(), errors);
    Standing standing = analysed(recording, sheet);
    LoadLineResult past = LoadLineCheck.evaluate(standing, landmarks, Sheet.circumstances(clinic));
    return new caryatid.alignment.Stand(
        Measured.NOWHERE,
        Measured.NOWHERE,
        Optional.empty(),
        sheet,
        landmarks,
        standing,
        past.offsets(),
        past.moments(),
        past.remarks());
  }

  private static Standing analysed(Recording recording, TrialSheet sheet) throws BadInput {
    return StandAnalysis.analyse(recording, conditions(sheet));
  }

  private static StandAnalysis.Conditions conditions(TrialSheet sheet) {
    return new StandAnalysis.Conditions(
        sheet.stance(),
        List.of(Side.RIGHT),
        OptionalDouble.empty(),
        Clinic.ACCURACY,
        Optional.empty());
  }

  /**
   * The knee as it was read: turned with the wearer, tilted with the plate, swinging, and marked
   * beside.
   */
  private TrialSheet sheet(List<Target> targets, Stand readIn) {
    double cos = StrictMath.cos(errors.yawRad());
    double sin = StrictMath.sin(errors.yawRad());
    double x = wearer.kneeRightMm();
    double y = wearer.kneeAnteriorMm();
    double up = Wearer.KNEE_UP_MM;
    FootTrace body = readIn.whole();
    int moment = (int) (errors.swingAt() * body.size());
    double swing = up / Clinic.DOUBTS.pendulumMm();
    double swingRight = swing * (body.rightMm()[moment] - readIn.person().rightMm());
    double swingAnterior = swing * (body.anteriorMm()[moment] - readIn.person().anteriorMm());
    return Sheet.of(
        clinic,
        cos * x - sin * y + errors.tilt()[0] * up + errors.markMm()[0] + swingRight,
        sin * x + cos * y + errors.tilt()[1] * up + errors.markMm()[1] + swingAnterior,
        targets);
  }
}
