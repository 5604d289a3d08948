package caryatid.recording.track;

import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Samples;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Unit;

/**
 * Compares a plate's load with what a person can cause; a unit that is wrong by 10 or 1000 and hits
 * no edge shows here.
 */
final class PersonCheck {
  /** So many samples spread over a recording tell its mean and movement well enough. */
  private static final int ENOUGH = 10_000;

  private final PlateTrack track;
  private final double rateHz;
  private final String file;
  private final int step;

  PersonCheck(PlateTrack track, double rateHz, String file) {
    this.track = track;
    this.rateHz = rateHz;
    this.file = file;
    this.step = Math.max(1, track.usable().size() / ENOUGH);
  }

  StageMessages check() {
    StageMessages messages = StageMessages.none(file);
    Argument plateName = Argument.text(track.plate());
    double force = track.upN().map(this::mean).orElse(0.0);
    if (force > TrackLimits.HEAVIEST_N) {
      messages =
          messages.withProblem(
              ImportProblem.TOO_HEAVY,
              plateName,
              Argument.of(force / ForceUnit.STANDARD_GRAVITY, Unit.KG));
    }
    double sway =
        Math.max(
            track.copRightMm().map(this::deviation).orElse(0.0), deviation(track.copAnteriorMm()));
    // One that does not move at all is an empty plate's, and known as such.
    if (track.usable().count() >= TrackLimits.SHORTEST_PERSON_S * rateHz
        && sway > 0
        && sway < TrackLimits.STILLEST_MM) {
      messages = messages.withProblem(ImportProblem.TOO_STILL, plateName);
    }
    return messages;
  }

  private double mean(Samples series) {
    double sum = 0;
    int count = 0;
    for (int i = 0; i < series.size(); i += step) {
      if (track.usable().at(i)) {
        sum += series.at(i);
        count++;
      }
    }
    return sum / Math.max(1, count);
  }

  private double deviation(Samples series) {
    double mean = mean(series);
    double squares = 0;
    int count = 0;
    for (int i = 0; i < series.size(); i += step) {
      if (track.usable().at(i)) {
        squares += Math.pow(series.at(i) - mean, 2);
        count++;
      }
    }
    return Math.sqrt(squares / Math.max(1, count));
  }
}
