package caryatid.report;

import caryatid.chart.Letters;
import caryatid.chart.Spot;
import caryatid.chart.Style.Ink;
import caryatid.chart.Style.Lettering;
import caryatid.report.Block.Column;
import caryatid.report.Block.Table;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;

/** A table as pieces of a page, a row each. */
final class TablePieces {
  private static final double GUTTER_MM = 2;
  private static final double PADDING_MM = 0.55;

  private final Table table;
  private final double leftMm;
  private final double widthMm;
  private final List<Double> widths = new ArrayList<>();

  TablePieces(Table table, double leftMm, double widthMm) {
    this.table = table;
    this.leftMm = leftMm;
    this.widthMm = widthMm;
    double parts = table.columns().stream().mapToDouble(Column::parts).sum();
    table.columns().forEach(column -> widths.add(column.parts() / parts * widthMm));
  }

  List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(Piece.opening("Table"));
    pieces.add(row(table.columns().stream().map(Column::heading).toList(), Lettering.STRONG));
    table.rows().forEach(cells -> pieces.add(row(cells, Lettering.PLAIN)));
    pieces.add(Piece.closing());
    return pieces;
  }

  private Piece row(List<String> cells, Lettering lettering) {
    List<List<String>> wrapped = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      wrapped.add(Letters.wrap(cells.get(i), lettering, widths.get(i) - GUTTER_MM));
    }
    int lines = wrapped.stream().mapToInt(List::size).max().orElse(1);
    double height = lines * lettering.lineMm() + 2 * PADDING_MM;
    boolean heading = lettering.bold();
    return Piece.of(
        height,
        (pen, top) -> {
          pen.tags().open("TR");
          cells(pen, wrapped, lettering, top + PADDING_MM);
          pen.tags().close();
          double under = top + height;
          pen.rule(
              new Spot(leftMm, under),
              new Spot(leftMm + widthMm, under),
              heading ? 0.25 : 0.1,
              heading ? Ink.BLACK : Ink.PALE_GREY);
        });
  }

  private void cells(PdfPen pen, List<List<String>> cells, Lettering lettering, double top)
      throws IOException {
    double left = leftMm;
    for (int i = 0; i < cells.size(); i++) {
      PDStructureElement cell = pen.tags().open(lettering.bold() ? "TH" : "TD");
      if (lettering.bold()) {
        PDTableAttributeObject scope = new PDTableAttributeObject();
        scope.setScope("Column");
        cell.addAttribute(scope);
      }
      cell(pen, cells.get(i), lettering, left, top, i);
      pen.tags().close();
      left += widths.get(i);
    }
  }

  private void cell(
      PdfPen pen, List<String> lines, Lettering lettering, double left, double top, int column)
      throws IOException {
    double down = top;
    for (String line : lines) {
      double free = widths.get(column) - GUTTER_MM - Letters.widthMm(line, lettering);
      double shift = table.columns().get(column).numbers() ? free : 0;
      pen.write(new Spot(left + shift, down + lettering.ascentMm()), line, lettering, Ink.BLACK);
      down += lettering.lineMm();
    }
  }
}
