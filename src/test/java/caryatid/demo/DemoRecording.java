package caryatid.demo;

import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Provenance;
import caryatid.recording.model.Recording;
import caryatid.recording.model.Samples;
import caryatid.recording.model.UsableMask;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * Twenty invented seconds at 100 Hz: a few sines about the demo's line, a step on and a step off.
 */
final class DemoRecording {
  private static final int SAMPLES = 2000;

  private DemoRecording() {}

  static Recording of(Demo demo, double shiftMm) {
    double[] time = new double[SAMPLES];
    double[] right = new double[SAMPLES];
    double[] anterior = new double[SAMPLES];
    double[] up = new double[SAMPLES];
    BitSet loaded = new BitSet(SAMPLES);
    for (int i = 0; i < SAMPLES; i++) {
      double t = i / 100.0;
      time[i] = t;
      double load = Math.min(1, Math.min(t / 1.2, (20 - t) / 0.4));
      up[i] = 398 * load + 3 * StrictMath.sin(5.1 * t);
      boolean usable = up[i] > 40;
      loaded.set(i, usable);
      right[i] = usable ? demo.lineRightMm + wave(t, 4, 1.3) : 0;
      anterior[i] = usable ? demo.lineAnteriorMm + shiftMm + wave(t, 7, 0.4) : 0;
    }
    UsableMask usable = new UsableMask(loaded, SAMPLES);
    List<PlateTrack> tracks = new ArrayList<>();
    tracks.add(track(demo.twoPlates ? "own plate" : "plate 1", right, anterior, up, usable));
    if (demo.twoPlates) {
      double[] other = DoubleStream.of(right).map(r -> -1.1 * r).toArray();
      tracks.add(track("other plate", other, anterior, up, usable));
    }
    return new Recording(
        new Provenance("demo-stand.csv", 123_456, "a".repeat(128)),
        Samples.of(time),
        100,
        tracks,
        List.of());
  }

  private static PlateTrack track(
      String plate, double[] right, double[] anterior, double[] up, UsableMask usable) {
    return new PlateTrack(
        plate,
        Optional.of(Samples.of(right)),
        Samples.of(anterior),
        Optional.of(Samples.of(up)),
        Optional.empty(),
        usable);
  }

  private static double wave(double t, double amplitude, double phase) {
    return amplitude
        * (StrictMath.sin(0.9 * t + phase)
            + 0.5 * StrictMath.sin(2.3 * t + 2 * phase)
            + 0.25 * StrictMath.sin(7.7 * t));
  }
}
