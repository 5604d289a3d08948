package caryatid.report;

import java.io.IOException;

/**
 * Something that stays together on a page.
 *
 * @param heightMm how much of the page it takes, mm
 * @param neededMm how much must be left for it to start on a page, mm
 * @param way draws it
 */
record Piece(double heightMm, double neededMm, Way way) {

  /** How a piece is drawn. */
  @FunctionalInterface
  interface Way {
    /**
     * @param topMm where its upper edge lies, mm from the page's
     */
    void draw(PdfPen pen, double topMm) throws IOException;
  }

  static Piece of(double heightMm, Way way) {
    return new Piece(heightMm, heightMm, way);
  }

  /** Opens an element around the pieces that follow. */
  static Piece opening(String type) {
    return of(0, (pen, top) -> pen.tags().open(type));
  }

  static Piece closing() {
    return of(0, (pen, top) -> pen.tags().close());
  }
}
