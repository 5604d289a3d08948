package caryatid.usecase.inspect;

import caryatid.recording.model.MarkerTrack;
import caryatid.recording.model.Samples;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Where a marker was on average in a part of the recording, in the person's frame, mm.
 *
 * @param name as a landmark; the file's own name of the wearer is left out
 * @param spreadMm the largest of its three standard deviations
 */
record MarkerPlace(String name, double rightMm, double anteriorMm, double upMm, double spreadMm) {

  /** From one time to another; empty where it was not seen between them. */
  static Optional<MarkerPlace> of(MarkerTrack track, double fromS, double toS) {
    int last = (int) Math.floor(toS * track.rateHz());
    int[] frames =
        IntStream.rangeClosed((int) Math.ceil(fromS * track.rateHz()), last)
            .filter(frame -> frame < track.seen().size() && track.seen().at(frame))
            .toArray();
    return frames.length == 0 ? Optional.empty() : Optional.of(of(track, frames));
  }

  private static MarkerPlace of(MarkerTrack track, int[] frames) {
    double spread =
        Math.max(
            deviation(track.rightMm(), frames),
            Math.max(deviation(track.anteriorMm(), frames), deviation(track.upMm(), frames)));
    return new MarkerPlace(
        "marker " + track.name().substring(track.name().lastIndexOf(':') + 1).strip(),
        mean(track.rightMm(), frames),
        mean(track.anteriorMm(), frames),
        mean(track.upMm(), frames),
        spread);
  }

  private static double mean(Samples samples, int[] frames) {
    return IntStream.of(frames).mapToDouble(samples::at).average().orElseThrow();
  }

  private static double deviation(Samples samples, int[] frames) {
    double mean = mean(samples, frames);
    return Math.sqrt(
        IntStream.of(frames)
            .mapToDouble(i -> (samples.at(i) - mean) * (samples.at(i) - mean))
            .average()
            .orElseThrow());
  }
}
