package caryatid.plate;

import caryatid.recording.model.Horizontal;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Sampled;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where a recording shows a load that rests, in the frame that the plate's description gives: the
 * force-weighted mean while the force is near its median, so that setting the load down and taking
 * it away do not count.
 *
 * @param plates the plates that bear it, in the recording's order
 * @param rightMm to the right of the zero, mm
 * @param anteriorMm anterior to the zero, mm
 * @param upN its force, N; empty for a recording of the centre of pressure alone
 * @param lean how its force leans; empty without horizontal force
 */
public record ShownLoad(
    List<String> plates,
    double rightMm,
    double anteriorMm,
    OptionalDouble upN,
    Optional<Lean> lean) {
  /** A resting load's force stays so near its median (common practice, no source). */
  private static final double NEAR = 0.1;

  public ShownLoad {
    plates = List.copyOf(plates);
  }

  /**
   * How a force leans from the vertical, rad.
   *
   * @param rightRad to the right
   * @param anteriorRad anteriorly
   */
  public record Lean(double rightRad, double anteriorRad) {}

  /**
   * The load of a recording; empty where nothing rests on a plate that measures both directions.
   */
  public static Optional<ShownLoad> of(Sampled recording) {
    List<PlateTrack> tracks =
        recording.plates().stream()
            .filter(track -> track.usable().count() > 0 && track.copRightMm().isPresent())
            .toList();
    return tracks.isEmpty() ? Optional.empty() : new LoadSums(tracks, recording.size()).load();
  }

  /** Sums over the samples that count. */
  private static final class LoadSums {
    private final List<PlateTrack> tracks;
    private final double[] force;
    private final boolean horizontal;

    LoadSums(List<PlateTrack> tracks, int size) {
      this.tracks = tracks;
      this.force = new double[size];
      this.horizontal = tracks.stream().allMatch(track -> track.horizontal().isPresent());
      for (int i = 0; i < size; i++) {
        for (PlateTrack track : tracks) {
          force[i] += weight(track, i);
        }
      }
    }

    /** A plate without a vertical force counts each of its samples alike. */
    private static double weight(PlateTrack track, int sample) {
      if (!track.usable().at(sample)) {
        return 0;
      }
      return track.upN().map(up -> up.at(sample)).orElse(1.0);
    }

    Optional<ShownLoad> load() {
      double median = median();
      double[] sums = new double[5];
      double[] borne = new double[tracks.size()];
      int samples = 0;
      for (int i = 0; i < force.length; i++) {
        if (force[i] > 0 && Math.abs(force[i] - median) <= NEAR * median) {
          samples++;
          add(sums, borne, i);
        }
      }
      return samples == 0 ? Optional.empty() : Optional.of(shown(sums, borne, samples));
    }

    private double median() {
      double[] loaded = Arrays.stream(force).filter(f -> f > 0).sorted().toArray();
      return loaded.length == 0 ? 0 : loaded[loaded.length / 2];
    }

    private void add(double[] sums, double[] borne, int sample) {
      for (int t = 0; t < tracks.size(); t++) {
        PlateTrack track = tracks.get(t);
        double weight = weight(track, sample);
        borne[t] += weight;
        sums[0] += weight;
        sums[1] += weight * track.copRightMm().orElseThrow().at(sample);
        sums[2] += weight * track.copAnteriorMm().at(sample);
        if (horizontal && weight > 0) {
          Horizontal push = track.horizontal().orElseThrow();
          sums[3] += push.rightN().at(sample);
          sums[4] += push.anteriorN().at(sample);
        }
      }
    }

    private ShownLoad shown(double[] sums, double[] borne, int samples) {
      boolean known = tracks.stream().allMatch(track -> track.upN().isPresent());
      List<String> bearing =
          tracks.stream()
              .filter(track -> borne[tracks.indexOf(track)] > NEAR * sums[0])
              .map(PlateTrack::plate)
              .toList();
      return new ShownLoad(
          bearing,
          sums[1] / sums[0],
          sums[2] / sums[0],
          known ? OptionalDouble.of(sums[0] / samples) : OptionalDouble.empty(),
          known && horizontal
              ? Optional.of(new Lean(Math.atan(sums[3] / sums[0]), Math.atan(sums[4] / sums[0])))
              : Optional.empty());
    }
  }
}
