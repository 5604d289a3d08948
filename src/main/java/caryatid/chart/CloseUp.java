package caryatid.chart;

import caryatid.chart.Leg.Level;
import caryatid.chart.Mark.Fill;
import caryatid.chart.Mark.Stroke;
import caryatid.chart.Style.Ink;
import caryatid.chart.Style.Pen;
import caryatid.loadline.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Close-ups of findings: how probable each offset is, as a curve over the tolerance, at a larger
 * scale than the leg's. What of the curve stands over the tolerance is filled: its share of the
 * whole area is the probability that the offset is within.
 */
final class CloseUp {
  static final double HEIGHT_MM = 7.4;
  private static final double CURVE_MM = 4.2;
  private static final double BASE_MM = 4.8;
  private static final double BAND_MIDDLE_MM = 6.1;
  private static final int STEPS = 60;

  /** How far to each side a curve is drawn, in standard uncertainties. */
  private static final double REACH = 3.2;

  private static final int[] SCALES = {1, 2, 3, 4, 5, 10, 20, 50};

  private final View view;
  private final int oneTo;

  private CloseUp(View view, int oneTo) {
    this.view = view;
    this.oneTo = oneTo;
  }

  /** The scale at which all close-ups of a leg fit a width; empty when there is nothing to show. */
  static OptionalInt scale(Leg leg, double roomMm) {
    double widest =
        leg.levels().stream()
            .flatMap(level -> level.finding().stream())
            .mapToDouble(f -> highest(f) - lowest(f))
            .max()
            .orElse(0);
    return widest > 0
        ? IntStream.of(SCALES).filter(s -> widest / s <= roomMm).findFirst()
        : OptionalInt.empty();
  }

  static List<Mark> marks(Level level, View view, int oneTo, Box room) {
    return level
        .finding()
        .map(finding -> new CloseUp(view, oneTo).marks(finding, room))
        .orElse(List.of());
  }

  private static double reach(Finding finding) {
    return REACH * finding.offset().mm().standardUncertainty();
  }

  private static double lowest(Finding finding) {
    return Math.min(finding.target().lowestMm(), finding.offset().mm().value() - reach(finding));
  }

  private static double highest(Finding finding) {
    return Math.max(finding.target().highestMm(), finding.offset().mm().value() + reach(finding));
  }

  private List<Mark> marks(Finding finding, Box room) {
    double start = view.sign() > 0 ? lowest(finding) : highest(finding);
    Spot zero = new Spot(room.leftMm(), room.topMm() + BASE_MM);
    Strip strip = new Strip(zero, start);
    List<Mark> marks = new ArrayList<>();
    double mean = finding.offset().mm().value();
    double from = Math.max(finding.target().lowestMm(), mean - reach(finding));
    double until = Math.min(finding.target().highestMm(), mean + reach(finding));
    if (until > from) {
      marks.add(new Fill(strip.curve(finding, from, until, true), Ink.PALE_BLUE));
    }
    marks.add(
        new Stroke(
            strip.curve(finding, mean - reach(finding), mean + reach(finding), false), Pen.TRACE));
    Spot line = strip.at(mean);
    marks.add(Stroke.of(Pen.LOAD_LINE, line.moved(0, -CURVE_MM), line.moved(0, 2.4)));
    double down = BAND_MIDDLE_MM - BASE_MM;
    marks.addAll(
        Symbols.target(
            strip.at(finding.target().lowestMm()).moved(0, down),
            strip.at(finding.target().highestMm()).moved(0, down),
            strip.at(finding.target().recommendedMm()).moved(0, down)));
    return marks;
  }

  private final class Strip {
    private final Spot zero;
    private final double startMm;

    Strip(Spot zero, double startMm) {
      this.zero = zero;
      this.startMm = startMm;
    }

    Spot at(double offsetMm) {
      return zero.moved(view.sign() * (offsetMm - startMm) / oneTo, 0);
    }

    List<Spot> curve(Finding finding, double from, double until, boolean closed) {
      List<Spot> curve = new ArrayList<>();
      for (int i = 0; i <= STEPS; i++) {
        double mm = from + (until - from) * i / STEPS;
        curve.add(at(mm).moved(0, -CURVE_MM * density(finding, mm)));
      }
      if (closed) {
        curve.add(at(until));
        curve.add(at(from));
      }
      return curve;
    }
  }

  /** Student's t, or the normal distribution as its limit, as a fraction of its peak. */
  private static double density(Finding finding, double mm) {
    double u = finding.offset().mm().standardUncertainty();
    double dof = finding.offset().mm().degreesOfFreedom();
    double t = u > 0 ? (mm - finding.offset().mm().value()) / u : 0;
    return Double.isInfinite(dof)
        ? StrictMath.exp(-t * t / 2)
        : StrictMath.pow(1 + t * t / dof, -(dof + 1) / 2);
  }
}
