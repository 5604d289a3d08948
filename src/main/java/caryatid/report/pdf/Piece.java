package caryatid.report.pdf;

import java.io.IOException;
import java.util.Optional;

/**
 * Something that stays together on a page.
 *
 * @param heightMm how much of the page it takes, mm
 * @param neededMm how much must be left for it to start on a page, mm
 * @param way draws it
 * @param above what is repeated above it if it continues on another page
 */
record Piece(double heightMm, double neededMm, Way way, Optional<Piece> above) {

  Piece(double heightMm, double neededMm, Way way) {
    this(heightMm, neededMm, way, Optional.empty());
  }

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

  /** The piece, which starts only where so much is left, mm. */
  Piece needing(double leftMm) {
    return new Piece(heightMm, leftMm, way, above);
  }

  /** The piece, with another above it where it goes on on a further page. */
  Piece under(Piece again) {
    return new Piece(heightMm, neededMm, way, Optional.of(again));
  }

  /** Opens an element around the pieces that follow. */
  static Piece opening(String type) {
    return of(0, (pen, top) -> pen.tags().open(type));
  }

  static Piece closing() {
    return of(0, (pen, top) -> pen.tags().close());
  }
}
