package caryatid.report;

import caryatid.chart.Drawing;
import caryatid.chart.Letters;
import caryatid.chart.Spot;
import caryatid.chart.Style.Ink;
import caryatid.chart.Style.Lettering;
import caryatid.report.Block.Blank;
import caryatid.report.Block.Blanks;
import caryatid.report.Block.Fact;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Facts, lines to fill in and drawings as pieces of a page. */
final class FormPieces {
  private static final double LABEL_MM = 29;
  private static final double GUTTER_MM = 5;
  private static final double BLANK_MM = 5.2;

  /** What a row of drawings takes besides the drawings themselves. */
  static final double AROUND_FIGURE_MM = 2.5;

  private final double leftMm;
  private final double widthMm;

  FormPieces(double leftMm, double widthMm) {
    this.leftMm = leftMm;
    this.widthMm = widthMm;
  }

  /** Facts in two columns, the left one first. */
  Piece facts(List<Fact> facts) {
    double column = (widthMm - GUTTER_MM) / 2;
    List<Double> heights = facts.stream().map(f -> height(f, column)).toList();
    double all = heights.stream().mapToDouble(Double::doubleValue).sum();
    int split = 0;
    double leftHeight = 0;
    while (split < facts.size() && leftHeight + heights.get(split) / 2 < all / 2) {
      leftHeight += heights.get(split++);
    }
    int first = split;
    return Piece.of(
        Math.max(leftHeight, all - leftHeight) + 0.5,
        (pen, top) -> {
          write(pen, facts.subList(0, first), leftMm, column, top);
          write(pen, facts.subList(first, facts.size()), leftMm + column + GUTTER_MM, column, top);
        });
  }

  private static List<String> value(Fact fact, double columnMm) {
    return Letters.wrap(fact.value(), Lettering.PLAIN, columnMm - LABEL_MM);
  }

  private static double height(Fact fact, double columnMm) {
    return value(fact, columnMm).size() * Lettering.PLAIN.lineMm() + 0.3;
  }

  private static void write(PdfPen pen, List<Fact> facts, double left, double column, double top)
      throws IOException {
    double down = top;
    for (Fact fact : facts) {
      pen.tags().open("P");
      Spot base = new Spot(left, down + Lettering.PLAIN.ascentMm());
      pen.write(base, fact.label(), Lettering.PLAIN, Ink.GREY);
      TextPieces.write(pen, value(fact, column), Lettering.PLAIN, left + LABEL_MM, down, Ink.BLACK);
      pen.tags().close();
      down += height(fact, column);
    }
  }

  List<Piece> blanks(Blanks blanks) {
    List<Piece> pieces = new ArrayList<>();
    for (int from = 0; from < blanks.blanks().size(); from += blanks.columns()) {
      int until = Math.min(from + blanks.columns(), blanks.blanks().size());
      pieces.add(blankRow(blanks.blanks().subList(from, until), blanks.columns()));
    }
    return pieces;
  }

  private Piece blankRow(List<Blank> row, int columns) {
    double column = (widthMm - (columns - 1) * GUTTER_MM) / columns;
    double height = row.stream().mapToDouble(blank -> height(blank, column)).max().orElse(0);
    return Piece.of(
        height,
        (pen, top) -> {
          double left = leftMm;
          for (Blank blank : row) {
            blank(pen, blank, left, column, top);
            left += column + GUTTER_MM;
          }
        });
  }

  private static double labelMm(Blank blank) {
    return Math.max(22, Letters.widthMm(blank.label(), Lettering.PLAIN) + 2);
  }

  private static List<String> filled(Blank blank, double columnMm) {
    return blank
        .filled()
        .map(words -> Letters.wrap(words, Lettering.PLAIN, columnMm - labelMm(blank)))
        .orElse(List.of());
  }

  private static double height(Blank blank, double columnMm) {
    return Math.max(BLANK_MM, filled(blank, columnMm).size() * Lettering.PLAIN.lineMm() + 1.2);
  }

  private static void blank(PdfPen pen, Blank blank, double left, double column, double top)
      throws IOException {
    double first = top + BLANK_MM - Lettering.PLAIN.lineMm() - 0.6;
    pen.tags().open("P");
    pen.write(
        new Spot(left, first + Lettering.PLAIN.ascentMm()),
        blank.label(),
        Lettering.PLAIN,
        Ink.GREY);
    List<String> lines = filled(blank, column);
    TextPieces.write(pen, lines, Lettering.PLAIN, left + labelMm(blank), first, Ink.BLACK);
    pen.tags().close();
    if (lines.isEmpty()) {
      double under = first + Lettering.PLAIN.lineMm();
      pen.rule(
          new Spot(left + labelMm(blank), under), new Spot(left + column, under), 0.1, Ink.GREY);
    }
  }

  /** Drawings side by side. */
  Piece figures(List<Drawing> drawings, double heightMm) {
    double free = widthMm - drawings.stream().mapToDouble(Drawing::widthMm).sum();
    double gap = drawings.size() > 1 ? free / (drawings.size() - 1) : 0;
    return Piece.of(
        heightMm + AROUND_FIGURE_MM,
        (pen, top) -> {
          double left = leftMm;
          for (Drawing drawing : drawings) {
            pen.tags().open("Figure").setAlternateDescription(drawing.alternative());
            pen.draw(drawing, new Spot(left, top + AROUND_FIGURE_MM / 2));
            pen.tags().close();
            left += drawing.widthMm() + gap;
          }
        });
  }
}
