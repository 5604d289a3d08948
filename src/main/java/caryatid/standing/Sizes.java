package caryatid.standing;

import caryatid.geometry.Plane;
import caryatid.recording.model.ForceUnit;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.uncertainty.SampleStatistics;
import java.util.ArrayList;
import java.util.List;

/**
 * Remarks on sizes that hardly any standing person shows: mostly a wrong unit, or one channel that
 * is wrong by a factor.
 *
 * <p>The limits of movement are set by 36 real stands of 60 s (the first, third and fifth run of
 * twelve of 60; open data set of Santos and Duarte 2016, PeerJ 4:e2648, computed). None of the
 * other 24 is remarked, and all of these are remarked or refused when their numbers are multiplied
 * or divided by 10 or more; of their parts of 20 s three in four are when divided by 10. They are
 * of both feet of people without a prosthesis: people with one may differ, so nothing is refused.
 */
final class Sizes {
  /**
   * Smallest standard deviation, mm, over the root of the length, s. In any part of 5 to 60 s of
   * the 36 it is at least 0.220 fore and aft and 0.077 sideways. In a minute it is 1.48 mm fore and
   * aft, where the smallest of all 1,930 stands is 1.52 mm.
   */
  private static final double LEAST_ANTERIOR_MM = 0.21;

  private static final double LEAST_RIGHT_MM = 0.075;

  /** The limits of smallest sizes grow no further with the length, s. */
  private static final double LONGEST_S = 50;

  /** Shorter parts may hold an unusually slow or quick moment, s. */
  private static final double SPEED_S = 20;

  /**
   * Speeds, mm/s, in 20 s of the 36: 2.68 to 38.0 fore and aft and 1.09 to 25.7 sideways; of the
   * other 24: 3.85 to 30.3 and 2.21 to 30.7.
   */
  private static final double SLOWEST_ANTERIOR = 2.2;

  private static final double SLOWEST_RIGHT = 0.9;
  private static final double FASTEST_ANTERIOR = 40;
  private static final double FASTEST_RIGHT = 31;

  /** Speed fore and aft over that sideways: 0.41 to 6.6 in any 5 s; single feet 2.2 and 2.7. */
  private static final double LEAST_RATIO = 0.3;

  private static final double MOST_RATIO = 10;

  /** A lighter whole body, or foot, is hardly that of a wearer, kg (no source). */
  private static final double LIGHT_BODY_KG = 20;

  private static final double LIGHT_FOOT_KG = 10;

  /** Horizontal over vertical force; one foot's leans by 4 deg, 0.07, in real standing. */
  private static final double MUCH_LEAN = 0.12;

  private final double rateHz;
  private final List<Remark> remarks = new ArrayList<>();

  private Sizes(double rateHz) {
    this.rateHz = rateHz;
  }

  /** The remarks on traces that are cut to the stretch. */
  static List<Remark> of(List<LoadSignals> quiet, double rateHz) {
    Sizes sizes = new Sizes(rateHz);
    quiet.forEach(sizes::look);
    return List.copyOf(sizes.remarks);
  }

  private void look(LoadSignals trace) {
    Movement anterior = Movement.of(trace.anteriorMm, rateHz);
    Movement right = Movement.of(trace.rightMm, rateHz);
    boolean body = trace.of == LoadLineOwner.WHOLE_BODY;
    move(trace, Plane.SAGITTAL, anterior, LEAST_ANTERIOR_MM, SLOWEST_ANTERIOR, FASTEST_ANTERIOR);
    // One foot's centre of pressure hardly moves sideways: its width is the foot's.
    move(
        trace,
        Plane.FRONTAL,
        right,
        body ? LEAST_RIGHT_MM : 0,
        body ? SLOWEST_RIGHT : 0,
        FASTEST_RIGHT);
    ratio(trace, anterior.speedMmPerS() / right.speedMmPerS());
    if (trace.hasForce) {
      weigh(trace, body ? LIGHT_BODY_KG : LIGHT_FOOT_KG);
    }
    if (trace.hasForce && trace.hasHorizontal() && !body) {
      lean(trace);
    }
  }

  private void move(
      LoadSignals trace,
      Plane plane,
      Movement movement,
      double least,
      double slowest,
      double fastest) {
    double durationS = trace.size() / rateHz;
    double leastMm = least * Math.sqrt(Math.min(LONGEST_S, durationS));
    boolean longEnough = durationS >= SPEED_S;
    if (movement.sdMm() < leastMm) {
      say(
          StandRemark.SMALL_MOVEMENT,
          Argument.term(trace.of),
          Argument.term(plane),
          Argument.of(movement.sdMm(), Unit.PLAIN),
          Argument.of(leastMm, Unit.PLAIN),
          Argument.of(durationS, Unit.S));
    } else if (longEnough && movement.speedMmPerS() < slowest) {
      say(StandRemark.SLOW_MOVEMENT, of(trace, plane, movement, slowest));
    }
    if (longEnough && movement.speedMmPerS() > fastest) {
      say(StandRemark.FAST_MOVEMENT, of(trace, plane, movement, fastest));
    }
  }

  private static Argument[] of(LoadSignals trace, Plane plane, Movement movement, double limit) {
    return new Argument[] {
      Argument.term(trace.of),
      Argument.term(plane),
      Argument.of(movement.speedMmPerS(), Unit.MM_PER_S),
      Argument.of(limit, Unit.MM_PER_S)
    };
  }

  private void ratio(LoadSignals trace, double ratio) {
    if (ratio < LEAST_RATIO || ratio > MOST_RATIO) {
      say(
          StandRemark.DIRECTIONS_APART,
          Argument.term(trace.of),
          Argument.of(ratio, Unit.PLAIN),
          Argument.of(LEAST_RATIO, Unit.PLAIN),
          Argument.of(MOST_RATIO, Unit.PLAIN));
    }
  }

  private void weigh(LoadSignals trace, double lightKg) {
    double kg = SampleStatistics.mean(trace.upN) / ForceUnit.STANDARD_GRAVITY;
    if (kg < lightKg) {
      say(StandRemark.LIGHT_LOAD, Argument.term(trace.of), Argument.of(kg, Unit.KG));
    }
  }

  private void lean(LoadSignals trace) {
    double pushN =
        Math.hypot(
            SampleStatistics.mean(trace.pushRightN), SampleStatistics.mean(trace.pushAnteriorN));
    double lean = pushN / SampleStatistics.mean(trace.upN);
    if (lean > MUCH_LEAN) {
      say(
          StandRemark.MUCH_LEAN,
          Argument.term(trace.of),
          Argument.of(Math.toDegrees(StrictMath.atan(lean)), Unit.DEG));
    }
  }

  private void say(StandRemark topic, Argument... arguments) {
    remarks.add(Remark.of(topic, arguments));
  }
}
