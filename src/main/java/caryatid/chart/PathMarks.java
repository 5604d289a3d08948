package caryatid.chart;

import caryatid.alignment.Stand;
import caryatid.chart.FootTracks.Track;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Scale;
import caryatid.chart.mark.Scale.PersonPoint;
import caryatid.chart.mark.Shapes;
import caryatid.chart.mark.Style.Pen;
import caryatid.chart.mark.Symbols;
import caryatid.recording.model.Samples;
import caryatid.standing.MeanLoad;
import caryatid.standing.QuietStretch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The path of one stand on one track over its quiet stretch, with its mean and ellipse; nothing
 * where the plate measured fore and aft only.
 */
record PathMarks(Stand stand, Track track) {
  /** Points closer on paper than a fraction of a pen's width add nothing. */
  private static final double LEAST_STEP_MM = 0.06;

  /** Opposite corners of all that path and ellipse take; none where there is neither. */
  List<PersonPoint> corners() {
    Corners corners = new Corners();
    eachPlace(corners);
    Ellipse.of(stand.standing(), track.of())
        .ifPresent(e -> e.forEach(place -> corners.at(place.acrossMm(), place.heightMm())));
    return corners.points();
  }

  private void eachPlace(PlaceVisitor visitor) {
    track.plate().copRightMm().ifPresent(right -> eachPlace(right, visitor));
  }

  private void eachPlace(Samples right, PlaceVisitor visitor) {
    Samples anterior = track.plate().copAnteriorMm();
    QuietStretch stretch = stand.standing().stretch();
    for (int i = stretch.fromIndex(); i < stretch.toIndex(); i++) {
      if (track.plate().usable().at(i)) {
        visitor.at(right.at(i), anterior.at(i));
      }
    }
  }

  Optional<PersonPoint> mean() {
    return stand.standing().load(track.of()).flatMap(PathMarks::mean);
  }

  /** Where a mean load meets the plate. */
  static Optional<PersonPoint> mean(MeanLoad load) {
    return load.copRightMm()
        .map(right -> new PersonPoint(right.value(), load.copAnteriorMm().value()));
  }

  List<Mark> at(Scale scale) {
    List<Mark> marks = new ArrayList<>();
    List<PaperPoint> path = path(scale);
    if (path.size() > 1) {
      marks.add(new Stroke(path, Pen.TRACE));
    }
    Ellipse.of(stand.standing(), track.of())
        .ifPresent(
            e -> marks.add(Shapes.closed(e.stream().map(scale::spot).toList(), Pen.ELLIPSE)));
    mean().ifPresent(mean -> marks.addAll(Symbols.mean(scale.spot(mean))));
    return marks;
  }

  private List<PaperPoint> path(Scale scale) {
    Thinned path = new Thinned(scale);
    eachPlace(path);
    return path.points;
  }

  /** A place of the path, mm, as two numbers: a long stand has a hundred thousand of them. */
  @FunctionalInterface
  private interface PlaceVisitor {
    void at(double acrossMm, double heightMm);
  }

  private static final class Corners implements PlaceVisitor {
    private double left = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    @Override
    public void at(double acrossMm, double heightMm) {
      left = Math.min(left, acrossMm);
      right = Math.max(right, acrossMm);
      low = Math.min(low, heightMm);
      high = Math.max(high, heightMm);
    }

    List<PersonPoint> points() {
      return left > right
          ? List.of()
          : List.of(new PersonPoint(left, low), new PersonPoint(right, high));
    }
  }

  /** The path on paper, without points that add nothing. */
  private static final class Thinned implements PlaceVisitor {
    private final List<PaperPoint> points = new ArrayList<>();
    private final Scale scale;
    private double lastRightMm = Double.NEGATIVE_INFINITY;
    private double lastDownMm = Double.NEGATIVE_INFINITY;

    Thinned(Scale scale) {
      this.scale = scale;
    }

    @Override
    public void at(double acrossMm, double heightMm) {
      double right = scale.rightMm(acrossMm);
      double down = scale.downMm(heightMm);
      double rightward = right - lastRightMm;
      double downward = down - lastDownMm;
      if (rightward * rightward + downward * downward > LEAST_STEP_MM * LEAST_STEP_MM) {
        points.add(new PaperPoint(right, down));
        lastRightMm = right;
        lastDownMm = down;
      }
    }
  }
}
