package caryatid.chart;

import caryatid.chart.mark.Box;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Scale;
import caryatid.chart.mark.Scale.PersonPoint;
import caryatid.chart.mark.Shapes;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import caryatid.remark.Argument;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** One foot's path of every stand at a larger scale; several stands are numbered. */
final class PathCloseUp {
  private static final double MARGIN_MM = 2;
  private static final double NUMBERS_MM = 6;

  private final List<PathMarks> paths;
  private final Box frame;
  private final Scale scale;

  PathCloseUp(List<PathMarks> paths, Box frame) {
    this.paths = paths;
    this.frame = frame;
    List<PersonPoint> places = new ArrayList<>();
    paths.forEach(path -> places.addAll(path.corners()));
    double numbers = paths.size() > 1 ? NUMBERS_MM : 0;
    Box room =
        new Box(
            frame.leftMm() + MARGIN_MM,
            frame.topMm() + MARGIN_MM,
            frame.rightMm() - MARGIN_MM - numbers,
            frame.bottomMm() - MARGIN_MM);
    this.scale = Scale.centred(places, room);
  }

  List<Mark> marks(Wording wording, double belowMm) {
    List<Mark> marks = new ArrayList<>();
    paths.forEach(path -> marks.addAll(path.at(scale)));
    marks.addAll(numbers());
    marks.add(Shapes.closed(Shapes.corners(frame), Pen.TICK));
    String words = wording.fill("PathDrawing.CLOSE_UP", Argument.text(scale.words()));
    PaperPoint base = new PaperPoint(frame.leftMm(), frame.bottomMm() + belowMm - 1);
    String fitted = Fonts.fit(words, Lettering.PLAIN, frame.widthMm());
    marks.add(new Text(base, fitted, Lettering.PLAIN));
    return marks;
  }

  /** Each stand's number at the right edge, led to its mean; none for one stand or too many. */
  private List<Mark> numbers() {
    double line = Lettering.PLAIN.lineMm();
    List<Integer> stands =
        IntStream.range(0, paths.size())
            .filter(i -> paths.get(i).mean().isPresent())
            .boxed()
            .sorted(Comparator.comparingDouble((Integer i) -> mean(i).downMm()))
            .toList();
    if (paths.size() == 1 || stands.size() * line > frame.heightMm()) {
      return List.of();
    }
    List<Double> wanted = stands.stream().map(i -> mean(i).downMm() - line / 2).toList();
    List<Double> heights = stands.stream().map(i -> line).toList();
    List<Double> tops = tops(wanted, heights, frame.topMm(), frame.bottomMm());
    List<Mark> marks = new ArrayList<>();
    for (int n = 0; n < stands.size(); n++) {
      marks.addAll(number(stands.get(n), tops.get(n)));
    }
    return marks;
  }

  private PaperPoint mean(int stand) {
    return scale.spot(paths.get(stand).mean().orElseThrow());
  }

  private List<Mark> number(int stand, double topMm) {
    String words = Integer.toString(stand + 1);
    double left = frame.rightMm() - 0.8 - Fonts.widthMm(words, Lettering.PLAIN);
    PaperPoint beside = new PaperPoint(left - 0.6, topMm + Lettering.PLAIN.lineMm() / 2);
    return List.of(
        Stroke.of(Pen.LEADER, mean(stand), beside),
        new Text(new PaperPoint(left, topMm + Lettering.PLAIN.ascentMm()), words, Lettering.PLAIN));
  }

  /**
   * Spreads things in a column, each as near to where it belongs as its neighbours allow.
   *
   * @param wantedTopsMm where each would like its top, from the uppermost thing to the lowest, mm
   * @param heightsMm how high each is, mm; together not more than the room
   * @param topMm upper end of the room, mm
   * @param bottomMm lower end of the room, mm
   */
  private static List<Double> tops(
      List<Double> wantedTopsMm, List<Double> heightsMm, double topMm, double bottomMm) {
    List<Double> tops = new ArrayList<>();
    double free = topMm;
    for (int i = 0; i < wantedTopsMm.size(); i++) {
      double top = Math.max(free, wantedTopsMm.get(i));
      tops.add(top);
      free = top + heightsMm.get(i);
    }
    double taken = bottomMm;
    for (int i = tops.size() - 1; i >= 0; i--) {
      double top = Math.min(tops.get(i), taken - heightsMm.get(i));
      tops.set(i, top);
      taken = top;
    }
    return tops;
  }
}
