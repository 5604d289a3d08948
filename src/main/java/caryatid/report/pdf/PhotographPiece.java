package caryatid.report.pdf;

import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Lettering;
import caryatid.report.pages.Block.Photograph;
import caryatid.report.pages.Paper;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;

/** A photograph with its caption as a piece of a page. */
final class PhotographPiece {
  private static final double HIGHEST_MM = 95;
  private static final double AROUND_MM = 1.5;

  private PhotographPiece() {}

  static Piece of(Photograph photograph, double widthMm) {
    byte[] bytes = photograph.jpegOrPng();
    BufferedImage picture = read(bytes);
    double ratio = (double) picture.getWidth() / picture.getHeight();
    double highMm = Math.min(HIGHEST_MM, widthMm / ratio);
    double wideMm = highMm * ratio;
    List<String> caption = Fonts.wrap(photograph.caption(), Lettering.PLAIN, widthMm);
    double below = caption.size() * Lettering.PLAIN.lineMm();
    return Piece.of(
        highMm + below + 3 * AROUND_MM,
        (pen, top) -> {
          double down = top + AROUND_MM;
          pen.tags().open("Figure").setAlternateDescription(photograph.caption());
          pen.photograph(bytes, new PaperPoint(Paper.MARGIN_MM, down), wideMm, highMm);
          pen.tags().close();
          pen.tags().open("P");
          double under = down + highMm + AROUND_MM;
          TextPieces.write(pen, caption, Lettering.PLAIN, Paper.MARGIN_MM, under, Ink.BLACK);
          pen.tags().close();
        });
  }

  private static BufferedImage read(byte[] bytes) {
    try {
      return ImageIO.read(new ByteArrayInputStream(bytes));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
