package caryatid.report;

import java.util.Locale;

/**
 * A finding as small as a line of text: the tolerance as a band, the recommendation as a stroke,
 * the offset as a dot with its 95 % interval; all from the recommendation, to one scale for all
 * rows. What lies beyond the drawing ends at its edge with an open end.
 */
final class BatchDrawing {
  /** From the recommendation to either edge, mm. */
  private static final double REACH_MM = 50;

  private static final double WIDTH = 120;
  private static final double HEIGHT = 16;
  private static final double MIDDLE = HEIGHT / 2;

  private BatchDrawing() {}

  static String svg(FindingRow row) {
    double low = x(row, row.lowestMm());
    double high = x(row, row.highestMm());
    double from = x(row, row.offset().value() - row.expandedMm());
    double to = x(row, row.offset().value() + row.expandedMm());
    double at = x(row, row.offset().value());
    return "<svg width=\"%s\" height=\"%s\" viewBox=\"0 0 %s %s\" aria-hidden=\"true\">"
            .formatted(text(WIDTH), text(HEIGHT), text(WIDTH), text(HEIGHT))
        + "<rect class=\"band\" x=\"%s\" y=\"1\" width=\"%s\" height=\"14\"/>"
            .formatted(text(low), text(high - low))
        + line("middle", WIDTH / 2, 1, WIDTH / 2, HEIGHT - 1)
        + line("interval", from, MIDDLE, to, MIDDLE)
        + dot(at)
        + "</svg>";
  }

  /** Open at the edge: the offset lies further out. */
  private static String dot(double at) {
    boolean beyond = at <= 0 || at >= WIDTH;
    return "<circle class=\"%s\" cx=\"%s\" cy=\"%s\" r=\"3\"/>"
        .formatted(
            beyond ? "beyond" : "offset", text(Math.max(4, Math.min(WIDTH - 4, at))), text(MIDDLE));
  }

  private static String line(String look, double x1, double y1, double x2, double y2) {
    return "<line class=\"%s\" x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\"/>"
        .formatted(look, text(x1), text(y1), text(x2), text(y2));
  }

  private static double x(FindingRow row, double mm) {
    double fromMiddle = (mm - row.recommendedMm()) / REACH_MM * WIDTH / 2;
    return Math.max(0, Math.min(WIDTH, WIDTH / 2 + fromMiddle));
  }

  private static String text(double number) {
    return String.format(Locale.ROOT, "%.1f", number);
  }
}
