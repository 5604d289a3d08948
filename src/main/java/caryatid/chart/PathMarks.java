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
import java.util.function.Consumer;

/**
 * The path of one stand on one track over its quiet stretch, with its mean and ellipse; nothing
 * where the plate measured fore and aft only.
 */
record PathMarks(Stand stand, Track track) {
  /** Points closer on paper than a fraction of a pen's width add nothing. */
  private static final double LEAST_STEP_MM = 0.03;

  /** All that path and ellipse take. */
  List<PersonPoint> places() {
    List<PersonPoint> places = new ArrayList<>();
    eachPlace(places::add);
    Ellipse.of(stand.standing(), track.of()).ifPresent(places::addAll);
    return places;
  }

  private void eachPlace(Consumer<PersonPoint> place) {
    track.plate().copRightMm().ifPresent(right -> eachPlace(right, place));
  }

  private void eachPlace(Samples right, Consumer<PersonPoint> place) {
    Samples anterior = track.plate().copAnteriorMm();
    QuietStretch stretch = stand.standing().stretch();
    for (int i = stretch.fromIndex(); i < stretch.toIndex(); i++) {
      if (track.plate().usable().at(i)) {
        place.accept(new PersonPoint(right.at(i), anterior.at(i)));
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
    List<PaperPoint> path = new ArrayList<>();
    eachPlace(
        place -> {
          PaperPoint spot = scale.spot(place);
          if (path.isEmpty() || spot.distanceMm(path.get(path.size() - 1)) > LEAST_STEP_MM) {
            path.add(spot);
          }
        });
    return path;
  }
}
