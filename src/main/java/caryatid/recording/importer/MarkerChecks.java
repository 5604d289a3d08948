package caryatid.recording.importer;

import caryatid.geometry.Side;
import caryatid.recording.model.BodyPoint;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.MarkerTrack;
import caryatid.recording.model.Markers;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Samples;
import caryatid.recording.model.UsableMask;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Whether the load on a plate lies where markers show the foot. */
final class MarkerChecks {
  /** No foot reaches further from between its heel and toe markers (common practice, no source). */
  private static final double REACH_MM = 200;

  private final Markers markers;
  private final String file;

  MarkerChecks(Markers markers, String file) {
    this.markers = markers;
    this.file = file;
  }

  /** A problem for each foot, alone on its plate, that the mean centre of pressure is not under. */
  StageMessages of(List<PlateTrack> tracks) {
    StageMessages messages = StageMessages.none(file);
    for (Map.Entry<Side, String> foot : markers.feet().entrySet()) {
      boolean alone = Collections.frequency(markers.feet().values(), foot.getValue()) == 1;
      for (PlateTrack track : tracks) {
        if (alone && track.plate().equals(foot.getValue()) && track.usable().count() > 0) {
          messages = messages.and(checked(foot.getKey(), track));
        }
      }
    }
    return messages;
  }

  private StageMessages checked(Side side, PlateTrack track) {
    double anterior =
        mean(track.copAnteriorMm(), track.usable()) - middle(side, MarkerTrack::anteriorMm);
    double right =
        track
            .copRightMm()
            .map(cop -> mean(cop, track.usable()) - middle(side, MarkerTrack::rightMm))
            .orElse(0.0);
    double apart = Math.hypot(anterior, right);
    StageMessages nothing = StageMessages.none(file);
    return apart <= REACH_MM
        ? nothing
        : nothing.withProblem(
            ImportProblem.MOTION_OFF_FOOT,
            Argument.term(side),
            Argument.text(track.plate()),
            Argument.of(apart, Unit.MM));
  }

  /** Between the heel's and the toe's markers; 0 without any, which no foot on a plate is. */
  private double middle(Side side, Function<MarkerTrack, Samples> along) {
    return (of(side, BodyPoint.HEEL, along) + of(side, BodyPoint.TOE, along)) / 2;
  }

  private double of(Side side, BodyPoint point, Function<MarkerTrack, Samples> along) {
    return markers.tracks().stream()
        .filter(m -> m.side() == side && m.point() == point)
        .mapToDouble(m -> mean(along.apply(m), m.seen()))
        .average()
        .orElse(0);
  }

  private static double mean(Samples samples, UsableMask counted) {
    return IntStream.range(0, samples.size())
        .filter(counted::at)
        .mapToDouble(samples::at)
        .average()
        .orElse(0);
  }
}
