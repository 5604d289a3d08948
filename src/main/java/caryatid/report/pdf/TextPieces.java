package caryatid.report.pdf;

import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Lettering;
import caryatid.report.pages.Block.Bullet;
import caryatid.report.pages.Block.Points;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Headings, running text and lists as pieces of a page. */
final class TextPieces {
  private static final double HEADING_ABOVE_MM = 1.7;
  private static final double HEADING_BELOW_MM = 0.3;
  private static final double INDENT_MM = 3;
  private static final double GUTTER_MM = 5;

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
    return tagged("H2", words, Lettering.HEADING, HEADING_ABOVE_MM, HEADING_BELOW_MM);
  }

  Piece prose(String words, boolean strong) {
    return tagged("P", words, strong ? Lettering.STRONG : Lettering.PLAIN, 0.6, 0.6);
  }

  private Piece tagged(
      String type, String words, Lettering lettering, double aboveMm, double belowMm) {
    List<String> lines = Fonts.wrap(words, lettering, widthMm);
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
      pen.write(new PaperPoint(left, down + lettering.ascentMm()), line, lettering, ink);
      down += lettering.lineMm();
    }
    return down;
  }

  List<Piece> points(Points points) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(Piece.opening("L"));
    double column = (widthMm - (points.columns() - 1) * GUTTER_MM) / points.columns();
    List<ListItem> items =
        points.points().stream().map(point -> new ListItem(point, column)).toList();
    if (points.columns() == 1) {
      items.forEach(item -> pieces.add(item.piece()));
    } else {
      pieces.add(sideBySide(items, column));
    }
    pieces.add(Piece.closing());
    return pieces;
  }

  /** Two columns of points, as equal in height as undivided points allow. */
  private Piece sideBySide(List<ListItem> items, double columnMm) {
    double all = ListItem.heightMm(items);
    int split = 0;
    while (ListItem.heightMm(items.subList(0, split)) < all / 2) {
      split++;
    }
    List<ListItem> first = items.subList(0, split);
    List<ListItem> second = items.subList(split, items.size());
    return Piece.of(
        Math.max(ListItem.heightMm(first), ListItem.heightMm(second)),
        (pen, top) -> {
          ListItem.draw(first, pen, leftMm, top);
          ListItem.draw(second, pen, leftMm + columnMm + GUTTER_MM, top);
        });
  }

  /** A point in lines. */
  private final class ListItem {
    private final String lead;
    private final double leadMm;
    private final List<String> lines;

    ListItem(Bullet point, double columnMm) {
      this.lead = point.lead().isEmpty() ? "" : point.lead() + ": ";
      this.leadMm = Fonts.widthMm(lead, Lettering.STRONG);
      this.lines = Fonts.wrap(point.words(), Lettering.PLAIN, columnMm - INDENT_MM, leadMm);
    }

    static double heightMm(List<ListItem> items) {
      return items.stream().mapToDouble(ListItem::heightMm).sum();
    }

    static void draw(List<ListItem> items, PdfPen pen, double left, double top) throws IOException {
      double down = top;
      for (ListItem item : items) {
        item.draw(pen, left, down);
        down += item.heightMm();
      }
    }

    double heightMm() {
      return lines.size() * Lettering.PLAIN.lineMm() + 0.5;
    }

    Piece piece() {
      return Piece.of(heightMm(), (pen, top) -> draw(pen, leftMm, top));
    }

    private void draw(PdfPen pen, double left, double top) throws IOException {
      PaperPoint base = new PaperPoint(left, top + Lettering.PLAIN.ascentMm());
      pen.tags().open("LI");
      pen.tags().open("Lbl");
      pen.write(base, "•", Lettering.PLAIN, Ink.BLACK);
      pen.tags().close();
      pen.tags().open("LBody");
      PaperPoint start = base.moved(INDENT_MM, 0);
      if (!lead.isEmpty()) {
        pen.write(start, lead, Lettering.STRONG, Ink.BLACK);
      }
      pen.write(start.moved(leadMm, 0), lines.get(0), Lettering.PLAIN, Ink.BLACK);
      double second = top + Lettering.PLAIN.lineMm();
      TextPieces.write(
          pen,
          lines.subList(1, lines.size()),
          Lettering.PLAIN,
          left + INDENT_MM,
          second,
          Ink.BLACK);
      pen.tags().close();
      pen.tags().close();
    }
  }
}
