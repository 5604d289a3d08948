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
    int n = track.copRightMm().size();
    double[][] cop = {track.copRightMm().shared(), track.copAnteriorMm().shared()};
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
    double[][] cop = new double[2][a.upN.length];
    double[] up = sum(a.upN, b.upN);
    for (int i = 0; i < up.length; i++) {
      double share = up[i] > 0 ? a.upN[i] / up[i] : 0.5;
      cop[0][i] = share * a.rightMm[i] + (1 - share) * b.rightMm[i];
      cop[1][i] = share * a.anteriorMm[i] + (1 - share) * b.anteriorMm[i];
    }
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

  /** The samples from an index up to, not including, another. */
  LoadSignals cut(int from, int to) {
    if (from == 0 && to == size()) {
      return this;
    }
    double[][] cop = {
      Arrays.copyOfRange(rightMm, from, to), Arrays.copyOfRange(anteriorMm, from, to)
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
