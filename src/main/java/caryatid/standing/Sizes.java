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
 * <p>The limits of movement are set by 36 real stands (see {@link StandLimits}). None of the other
 * 24 is remarked, and all of these are remarked or refused when their numbers are multiplied or
 * divided by 10 or more; of their parts of 20 s three in four are when divided by 10. They are of
 * both feet of people without a prosthesis: people with one may differ, so nothing is refused.
 */
final class Sizes {
  private final double rateHz;
  private final List<Remark> remarks = new ArrayList<>();

  private Sizes(double rateHz) {
    this.rateHz = rateHz;
  }

  /** The remarks on signals that are cut to the stretch. */
  static List<Remark> of(List<LoadSignals> quiet, double rateHz) {
    Sizes sizes = new Sizes(rateHz);
    quiet.forEach(sizes::look);
    return List.copyOf(sizes.remarks);
  }

  private void look(LoadSignals signals) {
    Movement anterior = Movement.of(signals.anteriorMm, rateHz);
    boolean body = signals.of == LoadLineOwner.WHOLE_BODY;
    move(
        signals,
        Plane.SAGITTAL,
        anterior,
        StandLimits.LEAST_ANTERIOR_MM,
        StandLimits.SLOWEST_ANTERIOR_MM_PER_S,
        StandLimits.FASTEST_ANTERIOR_MM_PER_S);
    if (signals.hasSideways()) {
      sideways(signals, anterior, body);
    }
    if (signals.hasForce) {
      weigh(signals, body ? StandLimits.LIGHT_BODY_KG : StandLimits.LIGHT_FOOT_KG);
    }
    if (signals.hasForce && signals.hasHorizontal()) {
      push(
          signals,
          Plane.SAGITTAL,
          signals.pushAnteriorN,
          signals.anteriorMm,
          StandLimits.PUSH_PER_MM);
      double sideways = body ? StandLimits.PUSH_PER_MM : StandLimits.FOOT_PUSH_RIGHT_PER_MM;
      push(signals, Plane.FRONTAL, signals.pushRightN, signals.rightMm, sideways);
      if (!body) {
        lean(signals);
      }
    }
  }

  /** One foot's centre of pressure hardly moves sideways: its width is the foot's. */
  private void sideways(LoadSignals signals, Movement anterior, boolean body) {
    Movement right = Movement.of(signals.rightMm, rateHz);
    move(
        signals,
        Plane.FRONTAL,
        right,
        body ? StandLimits.LEAST_RIGHT_MM : 0,
        body ? StandLimits.SLOWEST_RIGHT_MM_PER_S : 0,
        StandLimits.FASTEST_RIGHT_MM_PER_S);
    ratio(signals, anterior.speedMmPerS() / right.speedMmPerS());
  }

  /** A channel that holds one number is another's to find. */
  private void push(LoadSignals signals, Plane plane, double[] pushN, double[] mm, double perMm) {
    double quickN = QuickPush.quickSd(pushN, rateHz);
    double leastN = perMm * SampleStatistics.mean(signals.upN) * QuickPush.quickSd(mm, rateHz);
    if (quickN > 0 && quickN < leastN) {
      say(
          StandRemark.SMALL_PUSH,
          Argument.term(signals.of),
          Argument.term(plane),
          Argument.of(quickN, Unit.PLAIN),
          Argument.of(leastN, Unit.PLAIN));
    }
  }

  private void move(
      LoadSignals signals,
      Plane plane,
      Movement movement,
      double least,
      double slowest,
      double fastest) {
    double durationS = signals.size() / rateHz;
    double leastMm = least * Math.sqrt(Math.min(StandLimits.LEAST_UP_TO_S, durationS));
    boolean longEnough = durationS >= StandLimits.SPEED_S;
    if (movement.sdMm() < leastMm) {
      say(
          StandRemark.SMALL_MOVEMENT,
          Argument.term(signals.of),
          Argument.term(plane),
          Argument.of(movement.sdMm(), Unit.PLAIN),
          Argument.of(leastMm, Unit.PLAIN),
          Argument.of(durationS, Unit.S));
    } else if (longEnough && movement.speedMmPerS() < slowest) {
      say(StandRemark.SLOW_MOVEMENT, of(signals, plane, movement, slowest));
    }
    if (longEnough && movement.speedMmPerS() > fastest) {
      say(StandRemark.FAST_MOVEMENT, of(signals, plane, movement, fastest));
    }
  }

  private static Argument[] of(LoadSignals signals, Plane plane, Movement movement, double limit) {
    return new Argument[] {
      Argument.term(signals.of),
      Argument.term(plane),
      Argument.of(movement.speedMmPerS(), Unit.MM_PER_S),
      Argument.of(limit, Unit.MM_PER_S)
    };
  }

  private void ratio(LoadSignals signals, double ratio) {
    if (ratio < StandLimits.LEAST_RATIO || ratio > StandLimits.MOST_RATIO) {
      say(
          StandRemark.DIRECTIONS_APART,
          Argument.term(signals.of),
          Argument.of(ratio, Unit.PLAIN),
          Argument.of(StandLimits.LEAST_RATIO, Unit.PLAIN),
          Argument.of(StandLimits.MOST_RATIO, Unit.PLAIN));
    }
  }

  private void weigh(LoadSignals signals, double lightKg) {
    double kg = SampleStatistics.mean(signals.upN) / ForceUnit.STANDARD_GRAVITY;
    if (kg < lightKg) {
      say(StandRemark.LIGHT_LOAD, Argument.term(signals.of), Argument.of(kg, Unit.KG));
    }
  }

  private void lean(LoadSignals signals) {
    double pushN =
        Math.hypot(
            SampleStatistics.mean(signals.pushRightN),
            SampleStatistics.mean(signals.pushAnteriorN));
    double lean = pushN / SampleStatistics.mean(signals.upN);
    if (lean > StandLimits.MUCH_LEAN) {
      say(
          StandRemark.MUCH_LEAN,
          Argument.term(signals.of),
          Argument.of(Math.toDegrees(StrictMath.atan(lean)), Unit.DEG));
    }
  }

  private void say(StandRemark topic, Argument... arguments) {
    remarks.add(Remark.of(topic, arguments));
  }
}
