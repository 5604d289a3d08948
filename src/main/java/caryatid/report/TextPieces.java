package caryatid.report;

import caryatid.chart.Letters;
import caryatid.chart.Spot;
import caryatid.chart.Style.Ink;
import caryatid.chart.Style.Lettering;
import caryatid.report.Block.Point;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Headings, running text and lists as pieces of a page. */
final class TextPieces {
  private static final double HEADING_ABOVE_MM = 2.2;
  private static final double HEADING_BELOW_MM = 0.8;
  private static final double KEPT_WITH_HEADING_MM = 12;
  private static final double INDENT_MM = 3.5;

  private final double leftMm;
  private final double widthMm;

  TextPieces(double leftMm, double widthMm) {
    this.leftMm = leftMm;
    this.widthMm = widthMm;
  }

  Piece title(String words) {
    return tagged("H1", words, Lettering.HEADLINE, 0, 1.5);
  }

  Piece heading(String words) {
    Piece plain = tagged("H2", words, Lettering.HEADING, HEADING_ABOVE_MM, HEADING_BELOW_MM);
    return new Piece(plain.heightMm(), plain.heightMm() + KEPT_WITH_HEADING_MM, plain.way());
  }

  Piece prose(String words, boolean strong) {
    return tagged("P", words, strong ? Lettering.STRONG : Lettering.PLAIN, 0.6, 0.6);
  }

  private Piece tagged(
      String type, String words, Lettering lettering, double aboveMm, double belowMm) {
    List<String> lines = Letters.wrap(words, lettering, widthMm);
    return Piece.of(
        aboveMm + lines.size() * lettering.lineMm() + belowMm,
        (pen, top) -> {
          pen.tags().open(type);
          write(pen, lines, lettering, leftMm, top + aboveMm, Ink.BLACK);
          pen.tags().close();
        });
  }

  /** Writes lines one below the other; where the next would start. */
  static double write(
      PdfPen pen, List<String> lines, Lettering lettering, double left, double top, Ink ink)
      throws IOException {
    double down = top;
    for (String line : lines) {
      pen.write(new Spot(left, down + lettering.ascentMm()), line, lettering, ink);
      down += lettering.lineMm();
    }
    return down;
  }

  List<Piece> points(List<Point> points) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(Piece.opening("L"));
    points.forEach(point -> pieces.add(point(point)));
    pieces.add(Piece.closing());
    return pieces;
  }

  private Piece point(Point point) {
    String lead = point.lead().isEmpty() ? "" : point.lead() + ": ";
    double leadMm = Letters.widthMm(lead, Lettering.STRONG);
    double room = widthMm - INDENT_MM - leadMm;
    List<String> lines = Letters.wrap(point.words(), Lettering.PLAIN, room);
    return Piece.of(
        lines.size() * Lettering.PLAIN.lineMm() + 0.5,
        (pen, top) -> {
          Spot base = new Spot(leftMm, top + Lettering.PLAIN.ascentMm());
          pen.tags().open("LI");
          pen.tags().open("Lbl");
          pen.write(base, "•", Lettering.PLAIN, Ink.BLACK);
          pen.tags().close();
          pen.tags().open("LBody");
          if (!lead.isEmpty()) {
            pen.write(
                new Spot(leftMm + INDENT_MM, base.downMm()), lead, Lettering.STRONG, Ink.BLACK);
          }
          write(pen, lines, Lettering.PLAIN, leftMm + INDENT_MM + leadMm, top, Ink.BLACK);
          pen.tags().close();
          pen.tags().close();
        });
  }
}
