package caryatid.recording.track;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.table.StageFindings;
import caryatid.remark.Argument;
import caryatid.remark.Unit;

/** Compares the centre of pressure with the plate's edges, which reveals a wrong unit. */
final class EdgeCheck {
  private final PlateLayout.Extent edges;
  private final ImportProblem problem;
  private final StageFindings nothing;

  /**
   * @param problem the problem if the centre of pressure lies outside the plate; the remedy depends
   *     on where it comes from
   */
  EdgeCheck(PlateLayout.Extent edges, ImportProblem problem, String file) {
    this.edges = edges;
    this.problem = problem;
    this.nothing = StageFindings.none(file);
  }

  StageFindings check(PlateTrack track) {
    int used = 0;
    int outside = 0;
    double right = 0;
    double anterior = 0;
    for (int i = 0; i < track.usable().size(); i++) {
      if (track.usable().at(i)) {
        double x = track.copRightMm().at(i);
        double y = track.copAnteriorMm().at(i);
        used++;
        right += x;
        anterior += y;
        outside += within(x, y) ? 0 : 1;
      }
    }
    if (outside > TrackLimits.MOST_OUTSIDE * used) {
      return nothing.withProblem(
          problem,
          Argument.text(track.plate()),
          mm(right / used),
          mm(anterior / used),
          mm(edges.leftMm()),
          mm(edges.rightMm()),
          mm(edges.rearMm()),
          mm(edges.frontMm()));
    }
    return outside > 0
        ? nothing.withRemark(
            RecordingRemark.OFF_PLATE, Argument.text(track.plate()), Argument.count(outside))
        : nothing;
  }

  private boolean within(double right, double anterior) {
    return right >= edges.leftMm()
        && right <= edges.rightMm()
        && anterior >= edges.rearMm()
        && anterior <= edges.frontMm();
  }

  private static Argument mm(double value) {
    return Argument.of(value, Unit.MM);
  }
}
