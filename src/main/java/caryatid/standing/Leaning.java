package caryatid.standing;

import caryatid.recording.model.Recording;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Unit;
import caryatid.uncertainty.SampleStatistics;
import java.util.Arrays;
import java.util.List;

/**
 * Where the centre of pressure was at stated moments of a stand, against the stand's mean: how the
 * body leaned when a landmark was read.
 *
 * @param of whose: the whole body's where both feet were recorded, else the one line there is
 * @param rightMm mean of the moments less the stand's mean, to the right, mm; 0 where that was not
 *     measured
 * @param anteriorMm the same fore and aft
 * @param rightSdMm standard deviation within a second of each moment, over the root of their
 *     number, mm
 * @param anteriorSdMm the same fore and aft
 */
public record Leaning(
    LoadLineOwner of, double rightMm, double anteriorMm, double rightSdMm, double anteriorSdMm) {
  /** Nobody reads a ruler within less time than this to either side, s. */
  private static final double ABOUT_S = 1;

  /**
   * The leaning at moments.
   *
   * @param conditions of the stand's analysis
   * @param standing what that analysis found
   * @param atS moments, s from the recording's first sample; at least one
   * @throws BadInput if a moment is not in the recording, or nothing can be used about it
   */
  public static Leaning at(
      Recording recording, StandAnalysis.Conditions conditions, Standing standing, List<Double> atS)
      throws BadInput {
    StanceSignals signals =
        StanceSignals.of(recording, conditions.stance(), conditions.prosthetic());
    LoadSignals line = signals.all().get(signals.all().size() - 1);
    double[] right = new double[2];
    double[] anterior = new double[2];
    for (double moment : atS) {
      int from = Math.max(0, (int) Math.ceil((moment - ABOUT_S) * recording.rateHz()));
      int to =
          Math.min(recording.size(), (int) Math.floor((moment + ABOUT_S) * recording.rateHz()) + 1);
      boolean within = moment >= 0 && moment <= recording.timeS(recording.size() - 1);
      if (!within || to - from < 2 || !signals.usable().throughout(from, to)) {
        throw new BadInput(
            Problem.at(
                Place.of(recording.file()),
                StandProblem.NOT_READ_THEN,
                Argument.of(moment, Unit.S)));
      }
      add(right, line.rightMm, from, to);
      add(anterior, line.anteriorMm, from, to);
    }
    int count = atS.size();
    MeanLoad mean = standing.load(line.of).orElseThrow();
    return new Leaning(
        line.of,
        mean.copRightMm().map(mm -> right[0] / count - mm.value()).orElse(0.0),
        anterior[0] / count - mean.copAnteriorMm().value(),
        Math.sqrt(right[1]) / count,
        Math.sqrt(anterior[1]) / count);
  }

  /** Adds the mean and the variance of a part of a path. */
  private static void add(double[] sums, double[] path, int from, int to) {
    if (path.length == 0) {
      return;
    }
    double[] part = Arrays.copyOfRange(path, from, to);
    sums[0] += SampleStatistics.mean(part);
    sums[1] += SampleStatistics.covariance(part, part);
  }
}
