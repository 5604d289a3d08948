package caryatid.chart;

import caryatid.alignment.AlignmentState;
import caryatid.chart.leg.Leg;
import caryatid.chart.leg.LegView;
import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Scale;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Finding;
import caryatid.remark.Unit;
import caryatid.uncertainty.Estimate;
import caryatid.wording.LandmarkWords;
import caryatid.wording.ResultWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Plans a small drawing of one leg in the sagittal plane, to be put next to others of the same
 * scale: outline, load line, landmarks and targets, with what was found at the topmost target.
 */
public final class SmallLeg {
  /** Width on paper, mm. */
  public static final double WIDTH_MM = 35;

  /** Height on paper, mm. */
  public static final double HEIGHT_MM = 60;

  /** The small drawings' scale, the same for all so that they can be compared: one to so many. */
  private static final int LEAST = 12;

  private static final double CAPTION_MM = 15;
  private static final int CAPTION_LINES = 5;
  private static final double EDGE_MM = 1;

  private SmallLeg() {}

  /**
   * Plans the drawings of several states, all at one scale.
   *
   * @param states each with its title; one side may be empty of landmarks, and then has no drawing
   * @param side the leg
   */
  public static List<Drawing> plan(List<Titled> states, Side side, Wording wording) {
    LegView view = new LegView(Plane.SAGITTAL, side);
    List<Leg> legs = states.stream().map(s -> Leg.of(s.state(), Optional.empty(), view)).toList();
    double oneTo =
        legs.stream().filter(SmallLeg::isDrawn).mapToDouble(SmallLeg::oneTo).max().orElse(LEAST);
    List<Drawing> drawings = new ArrayList<>();
    for (int i = 0; i < states.size(); i++) {
      if (isDrawn(legs.get(i))) {
        drawings.add(drawing(states.get(i), legs.get(i), Math.max(LEAST, oneTo), wording));
      }
    }
    return drawings;
  }

  /**
   * A state and what stands over its drawing.
   *
   * @param name short, for files: letters, digits, hyphens
   * @param title which stand it is
   * @param under a line below the title, such as the footwear
   */
  public record Titled(String name, String title, String under, AlignmentState state) {}

  private static boolean isDrawn(Leg leg) {
    return !leg.levels().isEmpty();
  }

  private static Box room() {
    return new Box(EDGE_MM, CAPTION_MM, WIDTH_MM - EDGE_MM, HEIGHT_MM - EDGE_MM);
  }

  private static double oneTo(Leg leg) {
    return Scale.fitting(LegExtent.of(leg), room()).oneTo();
  }

  private static Drawing drawing(Titled titled, Leg leg, double oneTo, Wording wording) {
    Scale scale = Scale.fitting(LegExtent.of(leg), room(), oneTo);
    LegMarks marks = new LegMarks(leg, scale, room().heightMm() * oneTo);
    List<Part> parts = new ArrayList<>();
    parts.add(Part.background(caption(titled, leg, wording)));
    parts.add(marks.body());
    parts.add(Part.background(List.of(floor())));
    leg.line()
        .ifPresent(
            line -> {
              parts.add(Part.background(marks.interval(line)));
              parts.add(
                  Part.saying(LegSentences.line(line, wording), List.of(marks.vertical(line))));
            });
    leg.levels()
        .forEach(
            level ->
                parts.add(
                    Part.saying(
                        LegSentences.level(level, names(titled, wording), Plane.SAGITTAL, wording),
                        marks.level(level))));
    return new Drawing(
        titled.name(), WIDTH_MM, HEIGHT_MM, alternative(titled, leg, wording), parts);
  }

  private static Mark floor() {
    Box room = room();
    return Stroke.of(
        Pen.FLOOR,
        new PaperPoint(room.leftMm(), room.bottomMm()),
        new PaperPoint(room.rightMm(), room.bottomMm()));
  }

  private static List<Mark> caption(Titled titled, Leg leg, Wording wording) {
    List<Mark> marks = new ArrayList<>();
    double down = Lettering.STRONG.ascentMm();
    marks.add(line(down, titled.title(), Lettering.STRONG));
    List<String> lines = new ArrayList<>(List.of(titled.under()));
    topmost(leg).ifPresent(finding -> lines.addAll(found(finding, wording)));
    for (String words : lines.subList(0, Math.min(CAPTION_LINES - 1, lines.size()))) {
      down += Lettering.PLAIN.lineMm();
      marks.add(line(down, words, Lettering.PLAIN));
    }
    return marks;
  }

  private static Mark line(double downMm, String words, Lettering lettering) {
    return new Text(new PaperPoint(0, downMm), Fonts.fit(words, lettering, WIDTH_MM), lettering);
  }

  private static Optional<Finding> topmost(Leg leg) {
    return leg.levels().stream()
        .filter(level -> level.finding().isPresent())
        .max(Comparator.comparingDouble(Leg.Level::heightMm))
        .flatMap(Leg.Level::finding);
  }

  private static List<String> found(Finding finding, Wording wording) {
    String number =
        wording.signed(finding.offset().mm().value(), Unit.MM)
            + " ± "
            + wording.number(finding.offset().mm().expanded(Estimate.COVERAGE), Unit.MM);
    String verdict = new ResultWords(wording).result(finding);
    return Stream.concat(Stream.of(number), Fonts.wrap(verdict, Lettering.PLAIN, WIDTH_MM).stream())
        .toList();
  }

  private static String alternative(Titled titled, Leg leg, Wording wording) {
    List<String> sentences = new ArrayList<>(List.of(titled.title() + ", " + titled.under() + "."));
    leg.line().ifPresent(line -> sentences.add(LegSentences.line(line, wording)));
    leg.levels()
        .forEach(
            level ->
                sentences.add(
                    LegSentences.level(level, names(titled, wording), Plane.SAGITTAL, wording)));
    return String.join(" ", sentences);
  }

  private static LandmarkWords names(Titled titled, Wording wording) {
    return new LandmarkWords(wording, titled.state().trial());
  }
}
