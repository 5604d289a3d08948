package caryatid.report.pdf;

import caryatid.report.pages.Paper;
import caryatid.report.pages.ReportContent;
import java.io.IOException;

/** Lays a report's blocks out on pages; what does not fit continues on another page. */
final class PdfLayout {
  private static final double TOP_MM = 9;
  private static final double FOOTER_MM = 12.5;

  private final PdfPen pen;
  private double downMm = TOP_MM;

  PdfLayout(PdfPen pen) {
    this.pen = pen;
  }

  void lay(ReportContent content) throws IOException {
    for (int page = 0; page < content.pages().size(); page++) {
      if (page > 0) {
        turnPage();
      }
      for (Piece piece : new Pieces(pen.paper()).of(content.pages().get(page))) {
        place(piece);
      }
    }
  }

  private void place(Piece piece) throws IOException {
    if (downMm > TOP_MM && downMm + piece.neededMm() > bottomMm()) {
      turnPage();
      if (piece.above().isPresent()) {
        draw(piece.above().get());
      }
    }
    draw(piece);
  }

  private void draw(Piece piece) throws IOException {
    piece.way().draw(pen, downMm);
    downMm += piece.heightMm();
  }

  private void turnPage() throws IOException {
    pen.turnPage();
    downMm = TOP_MM;
  }

  /** Height of a page between its margins, mm. */
  static double roomMm(Paper paper) {
    return paper.heightMm() - TOP_MM - FOOTER_MM;
  }

  private double bottomMm() {
    return pen.paper().heightMm() - FOOTER_MM;
  }
}
