package caryatid.chart;

import caryatid.chart.leg.Leg;
import caryatid.chart.leg.Leg.Level;
import caryatid.chart.leg.LoadLine;
import caryatid.chart.mark.Scale.PersonPoint;
import java.util.ArrayList;
import java.util.List;

/** The part of a leg that has to fit on the paper. */
final class LegExtent {
  /** Room above the topmost landmark, as a factor of its height. */
  private static final double ABOVE = 1.06;

  private LegExtent() {}

  static List<PersonPoint> of(Leg leg) {
    List<PersonPoint> places = new ArrayList<>();
    LegOutline.of(leg).forEach(places::addAll);
    for (Level level : leg.levels()) {
      double height = level.heightMm() * ABOVE;
      places.add(new PersonPoint(level.acrossMm() - level.halfMm(), height));
      across(level, leg).forEach(across -> places.add(new PersonPoint(across, height)));
    }
    double top = topMm(places);
    leg.line().ifPresent(line -> lines(places, line, top));
    leg.beforeMm().ifPresent(across -> places.add(new PersonPoint(across, top)));
    return places;
  }

  static double topMm(List<PersonPoint> places) {
    return places.stream().mapToDouble(PersonPoint::heightMm).max().orElse(0);
  }

  private static void lines(List<PersonPoint> places, LoadLine line, double top) {
    places.add(new PersonPoint(line.acrossMm() - line.halfMm(), top));
    places.add(new PersonPoint(line.acrossMm() + line.halfMm(), top));
    line.leanPerUp()
        .ifPresent(lean -> places.add(new PersonPoint(line.acrossMm() + lean * top * ABOVE, top)));
  }

  private static List<Double> across(Level level, Leg leg) {
    List<Double> across = new ArrayList<>();
    across.add(level.acrossMm() + level.halfMm());
    level
        .finding()
        .ifPresent(
            f -> {
              across.add(level.acrossMm() + leg.view().sign() * f.target().lowestMm());
              across.add(level.acrossMm() + leg.view().sign() * f.target().highestMm());
            });
    return across;
  }
}
