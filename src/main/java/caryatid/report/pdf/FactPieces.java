package caryatid.report.pdf;

import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Lettering;
import caryatid.report.pages.Block.Blank;
import caryatid.report.pages.Block.Blanks;
import caryatid.report.pages.Block.Fact;
import caryatid.report.pages.Block.Facts;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Facts, lines to fill in and drawings as pieces of a page. */
final class FactPieces {
  private static final double LABEL_MM = 29;
  private static final double GUTTER_MM = 5;
  private static final double BLANK_MM = 5.2;

  /** What a row of drawings takes besides the drawings themselves. */
  static final double AROUND_FIGURE_MM = 2.5;

  private final double leftMm;
  private final double widthMm;

  FactPieces(double leftMm, double widthMm) {
    this.leftMm = leftMm;
    this.widthMm = widthMm;
  }

  /** Facts in columns of about one height, the left one first. */
  Piece facts(Facts facts) {
    double column = (widthMm - (facts.columns() - 1) * GUTTER_MM) / facts.columns();
    double label = labelMm(facts, column);
    List<List<Fact>> columns = columns(facts, column, label);
    double height = columns.stream().mapToDouble(of -> height(of, column, label)).max().orElse(0);
    return Piece.of(
        height + 0.5,
        (pen, top) -> {
          double left = leftMm;
          for (List<Fact> of : columns) {
            write(pen, of, left, column, label, top);
            left += column + GUTTER_MM;
          }
        });
  }

  /** Room for the widest label, as far as a column can spare it. */
  private static double labelMm(Facts facts, double columnMm) {
    double widest =
        facts.facts().stream()
            .mapToDouble(fact -> Fonts.widthMm(fact.label(), Lettering.PLAIN))
            .max()
            .orElse(0);
    return facts.columns() < 3 ? LABEL_MM : Math.min(widest + 2, 0.55 * columnMm);
  }

  private static List<List<Fact>> columns(Facts facts, double columnMm, double labelMm) {
    double left = height(facts.facts(), columnMm, labelMm);
    List<List<Fact>> columns = new ArrayList<>();
    int from = 0;
    for (int rest = facts.columns(); rest > 0; rest--) {
      double share = left / rest;
      double taken = 0;
      int until = from;
      while (until < facts.facts().size()
          && (rest == 1
              || taken + height(facts.facts().get(until), columnMm, labelMm) / 2 < share)) {
        taken += height(facts.facts().get(until++), columnMm, labelMm);
      }
      columns.add(facts.facts().subList(from, until));
      from = until;
      left -= taken;
    }
    return columns;
  }

  private static double height(List<Fact> facts, double columnMm, double labelMm) {
    return facts.stream().mapToDouble(fact -> height(fact, columnMm, labelMm)).sum();
  }

  private static List<String> value(Fact fact, double columnMm, double labelMm) {
    return Fonts.wrap(fact.value(), Lettering.PLAIN, columnMm - labelMm);
  }

  private static double height(Fact fact, double columnMm, double labelMm) {
    return value(fact, columnMm, labelMm).size() * Lettering.PLAIN.lineMm() + 0.3;
  }

  private static void write(
      PdfPen pen, List<Fact> facts, double left, double column, double label, double top)
      throws IOException {
    double down = top;
    for (Fact fact : facts) {
      pen.tags().open("P");
      PaperPoint base = new PaperPoint(left, down + Lettering.PLAIN.ascentMm());
      String words = Fonts.fit(fact.label(), Lettering.PLAIN, label - 1);
      pen.write(base, words, Lettering.PLAIN, Ink.GREY);
      List<String> value = value(fact, column, label);
      TextPieces.write(pen, value, Lettering.PLAIN, left + label, down, Ink.BLACK);
      pen.tags().close();
      down += height(fact, column, label);
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
    return Math.max(22, Fonts.widthMm(blank.label(), Lettering.PLAIN) + 2);
  }

  private static List<String> filled(Blank blank, double columnMm) {
    return blank
        .filled()
        .map(words -> Fonts.wrap(words, Lettering.PLAIN, columnMm - labelMm(blank)))
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
        new PaperPoint(left, first + Lettering.PLAIN.ascentMm()),
        blank.label(),
        Lettering.PLAIN,
        Ink.GREY);
    List<String> lines = filled(blank, column);
    TextPieces.write(pen, lines, Lettering.PLAIN, left + labelMm(blank), first, Ink.BLACK);
    pen.tags().close();
    if (lines.isEmpty()) {
      double under = first + Lettering.PLAIN.lineMm();
      pen.rule(
          new PaperPoint(left + labelMm(blank), under),
          new PaperPoint(left + column, under),
          0.1,
          Ink.GREY);
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
            pen.draw(drawing, new PaperPoint(left, top + AROUND_FIGURE_MM / 2));
            pen.tags().close();
            left += drawing.widthMm() + gap;
          }
        });
  }
}
