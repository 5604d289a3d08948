package caryatid.plate;

import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.PlateProof;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import java.util.ArrayList;
import java.util.List;

/** The uncertainties of what weights show of one plate. */
final class WeightBudget {
  /**
   * The acceleration of free fall, as a fraction of the standard one: from 9.780 at the equator to
   * 9.832 m/s^2 at the poles (GRS 80, Moritz 2000; from memory), a rectangular distribution (JCGM
   * 100:2008, 4.3.7).
   */
  private static final double GRAVITY =
      (9.832 - 9.780) / 2 / Math.sqrt(3) / ForceUnit.STANDARD_GRAVITY;

  private final List<MarkedWeight> marks;
  private final ProofDoubts doubts;

  WeightBudget(List<MarkedWeight> marks, ProofDoubts doubts) {
    this.marks = marks;
    this.doubts = doubts;
  }

  MeasuredPlate measured(String plate) {
    AffineFit fit = new AffineFit(marks);
    return new MeasuredPlate(
        plate,
        marks.size(),
        fitted(fit, fit.scaleRight(), fit.ofScaleRight(), fit.ofScaleRight()),
        fitted(fit, fit.scaleAnterior(), fit.ofScaleAnterior(), fit.ofScaleAnterior()),
        fitted(fit, fit.turnRad(), fit.ofTurn(), fit.ofTurn()),
        fitted(fit, fit.zeroRightMm(), fit.ofZero(), 1),
        fitted(fit, fit.zeroAnteriorMm(), fit.ofZero(), 1),
        cop());
  }

  /**
   * A fitted number. Scatter tells what differs from mark to mark. An error of place that is common
   * to the marks moves the zero by as much and leaves no scatter, so that it is counted beside it.
   */
  private Estimate fitted(AffineFit fit, double value, double ofScatter, double ofPlace) {
    double scatterMm = Math.sqrt(fit.variance());
    return Estimate.exact(value)
        .with(part(Cause.REPEATABILITY, scatterMm, ofScatter, fit.degrees()))
        .with(part(Cause.REGISTRATION, doubts.placeMm(), ofPlace, PlateAccuracy.STATED_DEGREES));
  }

  /**
   * How far the plate shows places from where they are. It is not corrected, so the mean square
   * about the true place counts, with what is systematic in it (JCGM 100:2008, F.2.4.5), and as
   * many degrees of freedom as there are marks: both directions of a mark share the weight's place.
   */
  private Estimate cop() {
    return Estimate.exact(0)
        .with(part(Cause.REPEATABILITY, deviationMm(marks), 1, marks.size()))
        .with(part(Cause.REGISTRATION, doubts.placeMm(), 1, PlateAccuracy.STATED_DEGREES))
        .with(unseen(PlateAccuracy.ASSUMED.copMm()));
  }

  /** Root mean square of how far places are shown from where they are, each direction, mm. */
  static double deviationMm(List<MarkedWeight> marks) {
    double squares = 0;
    for (MarkedWeight mark : marks) {
      squares += Math.pow(mark.shown().rightMm() - mark.rightMm(), 2);
      squares += Math.pow(mark.shown().anteriorMm() - mark.anteriorMm(), 2);
    }
    return Math.sqrt(squares / (2 * marks.size()));
  }

  /** What the weights cannot show because a person is heavier, as {@link PlateProof#unseen}. */
  private Contribution unseen(double assumed) {
    double unseen = PlateProof.unseen(meanKg(marks), doubts.bodyKg());
    return part(Cause.BODY_MASS, assumed * unseen, 1, PlateAccuracy.STATED_DEGREES);
  }

  /** The shown force over the true one, less 1, at each mark; empty without forces. */
  static List<Double> forceErrors(List<MarkedWeight> marks) {
    List<Double> errors = new ArrayList<>();
    for (MarkedWeight mark : marks) {
      double trueN = mark.kg() * ForceUnit.STANDARD_GRAVITY;
      mark.shown().upN().ifPresent(upN -> errors.add(upN / trueN - 1));
    }
    return errors;
  }

  /**
   * How far a shown force is from the true one, as a fraction of it.
   *
   * @param errors of all weights, and of a person whose mass is known
   * @param body whether such a person is among them
   */
  Estimate force(List<Double> errors, boolean body) {
    Estimate seen =
        Estimate.exact(0)
            .with(part(Cause.REPEATABILITY, rootMeanSquare(errors), 1, errors.size()))
            .with(
                part(Cause.REGISTRATION, doubts.weightFraction(), 1, PlateAccuracy.STATED_DEGREES))
            .with(part(Cause.LEVEL, GRAVITY, 1, Double.POSITIVE_INFINITY));
    return body ? seen : seen.with(unseen(PlateAccuracy.ASSUMED.forceFraction()));
  }

  /** How a force leans that does not, rad; both directions of a mark count as one. */
  Estimate lean(List<Double> leans) {
    return Estimate.exact(0)
        .with(part(Cause.REPEATABILITY, rootMeanSquare(leans), 1, marks.size()))
        .with(unseen(PlateAccuracy.ASSUMED.leanRad()));
  }

  /** The mean mass of weights, kg. */
  static double meanKg(List<MarkedWeight> marks) {
    return marks.stream().mapToDouble(MarkedWeight::kg).average().orElseThrow();
  }

  static double rootMeanSquare(List<Double> values) {
    return Math.sqrt(values.stream().mapToDouble(v -> v * v).average().orElse(0));
  }

  private static Contribution part(Cause cause, double u, double sensitivity, double degrees) {
    return new Contribution(new Source(cause, ""), u, sensitivity, degrees);
  }
}
