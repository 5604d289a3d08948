package caryatid.report.pdf;

import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Lettering;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.TableColumn;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;

/** A table as pieces of a page, a row each. */
final class TablePieces {
  private static final double GUTTER_MM = 2;
  private static final double PADDING_MM = 0.3;

  private final Table table;
  private final double leftMm;
  private final double widthMm;
  private final List<Double> widths = new ArrayList<>();

  TablePieces(Table table, double leftMm, double widthMm) {
    this.table = table;
    this.leftMm = leftMm;
    this.widthMm = widthMm;
    double parts = table.columns().stream().mapToDouble(TableColumn::parts).sum();
    table.columns().forEach(column -> widths.add(column.parts() / parts * widthMm));
    makeRoom(table.columns().stream().map(TablePieces::leastMm).toList());
  }

  /** Room for the longest word of a heading, which is never cut if another column can give way. */
  private static double leastMm(TableColumn column) {
    return Arrays.stream(column.heading().split("\\s"))
            .mapToDouble(word -> Fonts.widthMm(word, Lettering.STRONG))
            .max()
            .orElse(0)
        + GUTTER_MM;
  }

  private void makeRoom(List<Double> least) {
    double lacking = 0;
    double spare = 0;
    for (int i = 0; i < widths.size(); i++) {
      double over = widths.get(i) - least.get(i);
      lacking += Math.max(0, -over);
      spare += Math.max(0, over);
    }
    if (lacking == 0 || lacking > spare) {
      return;
    }
    for (int i = 0; i < widths.size(); i++) {
      double over = widths.get(i) - least.get(i);
      widths.set(i, over < 0 ? least.get(i) : widths.get(i) - over * lacking / spare);
    }
  }

  List<Piece> pieces() {
    List<TableRow> rows = new ArrayList<>();
    table.rows().forEach(cells -> rows.add(new TableRow(cells, false)));
    TableRow heading =
        new TableRow(table.columns().stream().map(TableColumn::heading).toList(), true);
    List<Piece> pieces = new ArrayList<>();
    pieces.add(Piece.opening("Table"));
    double first = rows.isEmpty() ? 0 : rows.get(0).heightMm();
    pieces.add(heading.piece().needing(heading.heightMm() + first));
    rows.forEach(row -> pieces.add(row.piece().under(heading.again())));
    pieces.add(Piece.closing());
    return pieces;
  }

  /** One row; each cell's text in lines. */
  private final class TableRow {
    private final boolean heading;
    private final List<List<String>> cells = new ArrayList<>();

    TableRow(List<String> words, boolean heading) {
      this.heading = heading;
      for (int i = 0; i < words.size(); i++) {
        Lettering lettering = lettering(i);
        double room = widths.get(i) - GUTTER_MM;
        cells.add(
            Stream.of(words.get(i).split("\n"))
                .flatMap(line -> Fonts.wrap(line, lettering, room).stream())
                .toList());
      }
    }

    private Lettering lettering(int column) {
      boolean strong = heading || table.columns().get(column).strong();
      return strong ? Lettering.STRONG : Lettering.PLAIN;
    }

    double heightMm() {
      int lines = cells.stream().mapToInt(List::size).max().orElse(1);
      return lines * Lettering.PLAIN.lineMm() + 2 * PADDING_MM;
    }

    Piece piece() {
      return Piece.of(
          heightMm(),
          (pen, top) -> {
            pen.tags().open("TR");
            for (int i = 0; i < cells.size(); i++) {
              open(pen);
              write(pen::write, i, top);
              pen.tags().close();
            }
            pen.tags().close();
            rule(pen, top);
          });
    }

    /** The heading once more on a further page, for the eye alone: it has been read out. */
    Piece again() {
      return Piece.of(
          heightMm(),
          (pen, top) -> {
            for (int i = 0; i < cells.size(); i++) {
              write(pen::writeUnread, i, top);
            }
            rule(pen, top);
          });
    }

    private void open(PdfPen pen) {
      PDStructureElement cell = pen.tags().open(heading ? "TH" : "TD");
      if (heading) {
        PDTableAttributeObject scope = new PDTableAttributeObject();
        scope.setScope("Column");
        cell.addAttribute(scope);
      }
    }

    private void write(PdfPen.Writing way, int column, double top) throws IOException {
      double left = leftMm + widths.subList(0, column).stream().mapToDouble(w -> w).sum();
      double down = top + PADDING_MM;
      Lettering lettering = lettering(column);
      for (String line : cells.get(column)) {
        double free = widths.get(column) - GUTTER_MM - Fonts.widthMm(line, lettering);
        double shift = table.columns().get(column).numbers() ? free : 0;
        way.write(
            new PaperPoint(left + shift, down + lettering.ascentMm()), line, lettering, Ink.BLACK);
        down += lettering.lineMm();
      }
    }

    private void rule(PdfPen pen, double top) throws IOException {
      double under = top + heightMm();
      pen.rule(
          new PaperPoint(leftMm, under),
          new PaperPoint(leftMm + widthMm, under),
          heading ? 0.25 : 0.1,
          heading ? Ink.BLACK : Ink.PALE_GREY);
    }
  }
}
