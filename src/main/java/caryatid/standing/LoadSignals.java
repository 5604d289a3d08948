package caryatid.standing;

import caryatid.recording.model.Horizontal;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Samples;
import java.util.Arrays;

/**
 * Centre of pressure and force of one foot or of the whole body, sample by sample, in the person's
 * frame. Arrays are not copied; callers must not change them.
 */
final class LoadSignals {
  final LoadLineOwner of;

  /** The plate's name; empty where two plates are added. */
  final String plate;

  /** Sideways; no elements where that was not measured. */
  final double[] rightMm;

  final double[] anteriorMm;

  /** Vertical force, N; all ones where none was recorded, so that every sample weighs the same. */
  final double[] upN;

  final boolean hasForce;

  /** Horizontal force, N; no elements where none was recorded. */
  final double[] pushRightN;

  final double[] pushAnteriorN;

  private LoadSignals(
      LoadLineOwner of,
      String plate,
      double[][] cop,
      double[] upN,
      boolean hasForce,
      double[] pushRightN,
      double[] pushAnteriorN) {
    this.of = of;
    this.plate = plate;
    this.rightMm = cop[0];
    this.anteriorMm = cop[1];
    this.upN = upN;
    this.hasForce = hasForce;
    this.pushRightN = pushRightN;
    this.pushAnteriorN = pushAnteriorN;
  }

  /** What one plate recorded. */
  static LoadSignals of(LoadLineOwner of, PlateTrack track) {
    int n = track.copAnteriorMm().size();
    double[][] cop = {
      track.copRightMm().map(Samples::shared).orElse(new double[0]), track.copAnteriorMm().shared()
    };
    return new LoadSignals(
        of,
        track.plate(),
        cop,
        track.upN().map(Samples::shared).orElseGet(() -> ones(n)),
        track.upN().isPresent(),
        track.horizontal().map(Horizontal::rightN).map(Samples::shared).orElse(new double[0]),
        track.horizontal().map(Horizontal::anteriorN).map(Samples::shared).orElse(new double[0]));
  }

  /** Both feet together: forces added, the centre of pressure their force-weighted mean. */
  static LoadSignals both(LoadSignals a, LoadSignals b) {
    double[] up = sum(a.upN, b.upN);
    boolean sideways = a.hasSideways() && b.hasSideways();
    double[][] cop = {
      sideways ? mean(a.upN, up, a.rightMm, b.rightMm) : new double[0],
      mean(a.upN, up, a.anteriorMm, b.anteriorMm)
    };
    boolean pushed = a.hasHorizontal() && b.hasHorizontal();
    return new LoadSignals(
        LoadLineOwner.WHOLE_BODY,
        "",
        cop,
        up,
        true,
        pushed ? sum(a.pushRightN, b.pushRightN) : new double[0],
        pushed ? sum(a.pushAnteriorN, b.pushAnteriorN) : new double[0]);
  }

  /** The mean of two feet's, each as much as it bears of the load. */
  private static double[] mean(double[] oneN, double[] bothN, double[] oneMm, double[] otherMm) {
    double[] mean = new double[bothN.length];
    for (int i = 0; i < mean.length; i++) {
      double share = bothN[i] > 0 ? oneN[i] / bothN[i] : 0.5;
      mean[i] = share * oneMm[i] + (1 - share) * otherMm[i];
    }
    return mean;
  }

  /** The samples from an index up to, not including, another. */
  LoadSignals cut(int from, int to) {
    if (from == 0 && to == size()) {
      return this;
    }
    double[][] cop = {
      hasSideways() ? Arrays.copyOfRange(rightMm, from, to) : rightMm,
      Arrays.copyOfRange(anteriorMm, from, to)
    };
    return new LoadSignals(
        of,
        plate,
        cop,
        Arrays.copyOfRange(upN, from, to),
        hasForce,
        hasHorizontal() ? Arrays.copyOfRange(pushRightN, from, to) : pushRightN,
        hasHorizontal() ? Arrays.copyOfRange(pushAnteriorN, from, to) : pushAnteriorN);
  }

  int size() {
    return upN.length;
  }

  boolean hasSideways() {
    return rightMm.length > 0;
  }

  boolean hasHorizontal() {
    return pushRightN.length > 0;
  }

  private static double[] ones(int size) {
    double[] ones = new double[size];
    Arrays.fill(ones, 1);
    return ones;
  }

  private static double[] sum(double[] a, double[] b) {
    double[] sum = a.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += b[i];
    }
    return sum;
  }
}
