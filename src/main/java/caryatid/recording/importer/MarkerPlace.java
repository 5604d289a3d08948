package caryatid.recording.importer;

import caryatid.recording.model.MarkerTrack;
import caryatid.recording.model.Samples;
import java.util.stream.IntStream;

/**
 * Where a marker was on average while it was seen, in the person's frame, mm.
 *
 * @param spreadMm the largest of its three standard deviations
 */
record MarkerPlace(double rightMm, double anteriorMm, double upMm, double spreadMm) {
  static MarkerPlace of(MarkerTrack track) {
    double right = mean(track, track.rightMm());
    double anterior = mean(track, track.anteriorMm());
    double up = mean(track, track.upMm());
    double spread =
        Math.max(
            deviation(track, track.rightMm(), right),
            Math.max(
                deviation(track, track.anteriorMm(), anterior),
                deviation(track, track.upMm(), up)));
    return new MarkerPlace(right, anterior, up, spread);
  }

  private static double mean(MarkerTrack track, Samples samples) {
    return IntStream.range(0, samples.size())
        .filter(track.seen()::at)
        .mapToDouble(samples::at)
        .average()
        .orElse(0);
  }

  private static double deviation(MarkerTrack track, Samples samples, double mean) {
    return Math.sqrt(
        IntStream.range(0, samples.size())
            .filter(track.seen()::at)
            .mapToDouble(i -> (samples.at(i) - mean) * (samples.at(i) - mean))
            .average()
            .orElse(0));
  }
}
