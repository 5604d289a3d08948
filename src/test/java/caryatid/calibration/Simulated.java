package caryatid.calibration;

import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Recording;
import caryatid.recording.model.Samples;
import caryatid.recording.model.UsableMask;
import caryatid.samples.Noise;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Simulated stands of 60 s as recordings of the centre of pressure alone, both feet on one plate.
 */
final class Simulated {
  private static final int RATE_HZ = 50;
  private static final int SAMPLES = 60 * RATE_HZ;

  private Simulated() {}

  static List<Recording> stands(Family family, int count) {
    return IntStream.range(0, count).mapToObj(i -> stand(family, new Noise(i))).toList();
  }

  private static Recording stand(Family family, Noise noise) {
    Family.Swaying sway = family.draw(noise);
    double[] timeS = new double[SAMPLES];
    for (int i = 0; i < SAMPLES; i++) {
      timeS[i] = i / (double) RATE_HZ;
    }
    PlateTrack track =
        new PlateTrack(
            "plate 1",
            Optional.of(Samples.of(sway.side().trace(SAMPLES, RATE_HZ, noise.split()))),
            Samples.of(sway.fore().trace(SAMPLES, RATE_HZ, noise.split())),
            Optional.empty(),
            Optional.empty(),
            UsableMask.all(SAMPLES));
    return new Recording(Measured.NOWHERE, Samples.of(timeS), RATE_HZ, List.of(track), List.of());
  }
}
