package caryatid.chart;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.EarlierState;
import caryatid.chart.StripDrawing.Symbol;
import caryatid.chart.leg.LegView;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.PrintableText;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import caryatid.chart.mark.Symbols;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.TimeText;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Plans the bar that checks a print's scale, and the key of the strips above it. */
public final class ScaleBar {
  private static final double BAR_MM = 100;
  private static final double ALONE_MM = 50;
  private static final double ROW_MM = 7.2;
  private static final int COLUMNS = 3;
  private static final double GAP_MM = 4;

  private final Set<Symbol> symbols;
  private final Optional<EarlierState> before;
  private final Wording wording;
  private final double widthMm;

  private ScaleBar(
      Set<Symbol> symbols, Optional<EarlierState> before, Wording wording, double widthMm) {
    this.symbols = symbols;
    this.before = before;
    this.wording = wording;
    this.widthMm = widthMm;
  }

  /**
   * Plans the drawing for all strips of a state.
   *
   * @param before the state before, whose offsets the strips mark
   * @param widthMm width on paper, at least 150 mm
   */
  public static Drawing plan(
      AlignmentState state, Optional<EarlierState> before, Wording wording, double widthMm) {
    Set<Symbol> symbols = EnumSet.noneOf(Symbol.class);
    for (Side side : state.trial().side().sides()) {
      for (Plane plane : Plane.values()) {
        if (StripDrawing.isDrawn(state, plane, side)) {
          LegView view = new LegView(plane, side);
          symbols.addAll(StripDrawing.symbols(state, before, view, widthMm));
        }
      }
    }
    return new ScaleBar(symbols, before, wording, widthMm).drawing();
  }

  /**
   * Plans a bar alone for a screen, whose scale nobody knows: it is to be compared with drawings of
   * the same width.
   *
   * @param widthMm width of the drawings, at least 80 mm
   */
  public static Drawing alone(Wording wording, double widthMm) {
    String says = wording.word("ScaleBar.ALONE");
    double height = ROW_MM;
    PaperPoint left = new PaperPoint(0.5, height / 2);
    List<Mark> marks = new ArrayList<>(marks(left, ALONE_MM));
    double base = height / 2 - Lettering.PLAIN.lineMm() / 2 + Lettering.PLAIN.ascentMm();
    marks.add(new Text(left.moved(ALONE_MM + GAP_MM, base - height / 2), says, Lettering.PLAIN));
    return new Drawing("bar", widthMm, height, says, List.of(Part.saying(says, marks)));
  }

  private static List<Mark> marks(PaperPoint left, double lengthMm) {
    List<Mark> marks = new ArrayList<>();
    marks.add(Stroke.of(Pen.LANDMARK, left, left.moved(lengthMm, 0)));
    for (int i = 0; i <= lengthMm / 10; i++) {
      double half = i % 5 == 0 ? 1.6 : 0.7;
      marks.add(Symbols.upright(Pen.LANDMARK, left.moved(10 * i, 0), half));
    }
    return marks;
  }

  private Drawing drawing() {
    double height = ROW_MM + Legend.heightMm(1 + symbols.size(), COLUMNS);
    String says = wording.word("ScaleBar.SAYS");
    return new Drawing(
        "scale", widthMm, height, says, List.of(Part.saying(says, bar()), Part.background(key())));
  }

  private List<Mark> bar() {
    double middle = ROW_MM / 2;
    PaperPoint left = new PaperPoint(0.2, middle);
    List<Mark> marks = marks(left, BAR_MM);
    double room = widthMm - BAR_MM - GAP_MM;
    List<String> lines = Fonts.wrap(wording.word("ScaleBar.BAR"), Lettering.PLAIN, room);
    double top = middle - Math.min(2, lines.size()) * Lettering.PLAIN.lineMm() / 2;
    for (String line : lines.subList(0, Math.min(2, lines.size()))) {
      PaperPoint base = new PaperPoint(BAR_MM + GAP_MM, top + Lettering.PLAIN.ascentMm());
      marks.add(new Text(base, Fonts.fit(line, Lettering.PLAIN, room), Lettering.PLAIN));
      top += Lettering.PLAIN.lineMm();
    }
    return marks;
  }

  private String words(EarlierState state) {
    return wording.fill(
        "Key.BEFORE",
        Argument.text(TimeText.brief(state.at())),
        Argument.text(PrintableText.of(state.footwear())));
  }

  private List<Mark> key() {
    Legend key = new Legend(0, ROW_MM, widthMm, COLUMNS);
    if (symbols.contains(Symbol.LINE)) {
      key.loadLine(wording.word("Key.LINE.LEFT_FOOT"));
    }
    if (symbols.contains(Symbol.TARGET)) {
      key.target(wording.word("Key.TARGET"));
    }
    key.landmark(wording.word("Key.ZERO"));
    before
        .filter(state -> symbols.contains(Symbol.BEFORE))
        .ifPresent(state -> key.before(words(state)));
    if (symbols.contains(Symbol.BREAK)) {
      key.broken(wording.word("Key.BREAK"));
    }
    return key.marks();
  }
}
