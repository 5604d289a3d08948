package caryatid.recording.track;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.Samples;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Compares the centre of pressure with the plate's edges in the directions that the plate measures,
 * which reveals a wrong unit.
 */
final class EdgeCheck {
  private final PlateLayout.Extent edges;
  private final ImportProblem problem;
  private final StageMessages nothing;

  /**
   * @param problem the problem if the centre of pressure of a plate that measures both directions
   *     lies outside; the remedy depends on where it comes from
   */
  EdgeCheck(PlateLayout.Extent edges, ImportProblem problem, String file) {
    this.edges = edges;
    this.problem = problem;
    this.nothing = StageMessages.none(file);
  }

  StageMessages check(PlateTrack track) {
    BitSet outside = beyond(track, track.copAnteriorMm(), edges.rearMm(), edges.frontMm());
    track
        .copRightMm()
        .ifPresent(right -> outside.or(beyond(track, right, edges.leftMm(), edges.rightMm())));
    if (outside.cardinality() > TrackLimits.MOST_OUTSIDE * track.usable().count()) {
      return nothing.withProblem(
          track.copRightMm().isPresent() ? problem : ImportProblem.OFF_PLATE_FORE_AND_AFT,
          where(track).toArray(Argument[]::new));
    }
    return outside.isEmpty()
        ? nothing
        : nothing.withRemark(
            RecordingRemark.OFF_PLATE,
            Argument.text(track.plate()),
            Argument.count(outside.cardinality()));
  }

  /** The used samples that lie beyond one of two edges. */
  private static BitSet beyond(PlateTrack track, Samples cop, double lowMm, double highMm) {
    BitSet beyond = new BitSet();
    for (int i = 0; i < cop.size(); i++) {
      if (!(cop.at(i) >= lowMm && cop.at(i) <= highMm) && track.usable().at(i)) {
        beyond.set(i);
      }
    }
    return beyond;
  }

  private List<Argument> where(PlateTrack track) {
    List<Argument> where = new ArrayList<>(List.of(Argument.text(track.plate())));
    track.copRightMm().ifPresent(right -> where.add(mm(mean(track, right))));
    where.add(mm(mean(track, track.copAnteriorMm())));
    if (track.copRightMm().isPresent()) {
      where.add(mm(edges.leftMm()));
      where.add(mm(edges.rightMm()));
    }
    where.add(mm(edges.rearMm()));
    where.add(mm(edges.frontMm()));
    return where;
  }

  private static double mean(PlateTrack track, Samples cop) {
    double sum = 0;
    for (int i = 0; i < cop.size(); i++) {
      sum += track.usable().at(i) ? cop.at(i) : 0;
    }
    return sum / track.usable().count();
  }

  private static Argument mm(double value) {
    return Argument.of(value, Unit.MM);
  }
}
