package caryatid.calibration;

import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Provenance;
import caryatid.recording.model.Recording;
import caryatid.recording.model.Samples;
import caryatid.recording.model.UsableMask;
import caryatid.samples.FootTrace;
import caryatid.samples.Stand;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** A stand as plates with errors record it. */
final class Measured {
  static final String LEFT_PLATE = "left";
  static final String RIGHT_PLATE = "right";

  /** What carries less is left out on import as well, N. */
  private static final double LEAST_N = 20;

  static final Provenance NOWHERE = new Provenance("simulated", 0, "0".repeat(128));

  private Measured() {}

  /** The recording of a stand: of both feet, or of the right one alone. */
  static Recording recording(Stand stand, int plates, Errors errors) {
    List<PlateTrack> tracks = new ArrayList<>();
    if (plates == 2) {
      tracks.add(track(LEFT_PLATE, stand.left(), errors, 0));
    }
    tracks.add(track(RIGHT_PLATE, stand.right(), errors, 1));
    double[] timeS = new double[stand.right().size()];
    for (int i = 0; i < timeS.length; i++) {
      timeS[i] = i / stand.rateHz();
    }
    return new Recording(NOWHERE, Samples.of(timeS), stand.rateHz(), tracks, List.of());
  }

  private static PlateTrack track(String name, FootTrace foot, Errors errors, int plate) {
    double cos = StrictMath.cos(errors.yawRad());
    double sin = StrictMath.sin(errors.yawRad());
    double[] right = new double[foot.size()];
    double[] anterior = new double[foot.size()];
    double[] up = new double[foot.size()];
    BitSet loaded = new BitSet();
    for (int i = 0; i < up.length; i++) {
      double x = foot.rightMm()[i];
      double y = foot.anteriorMm()[i];
      right[i] = cos * x - sin * y + errors.copMm()[2 * plate];
      anterior[i] = sin * x + cos * y + errors.copMm()[2 * plate + 1];
      up[i] = foot.upN()[i] * (1 + errors.forceFraction()[plate]);
      loaded.set(i, up[i] >= LEAST_N);
    }
    return new PlateTrack(
        name,
        Optional.of(Samples.of(right)),
        Samples.of(anterior),
        Optional.of(Samples.of(up)),
        Optional.empty(),
        new UsableMask(loaded, up.length));
  }
}
