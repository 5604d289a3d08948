package caryatid.report.pages;

/** Sizes of paper (ISO 216; ANSI/ASME Y14.1). */
public enum Paper {
  A4(210, 297),
  LETTER(215.9, 279.4);

  /** Left free on each side, mm. */
  public static final double MARGIN_MM = 12;

  private final double widthMm;
  private final double heightMm;

  Paper(double widthMm, double heightMm) {
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  /** Width, mm. */
  public double widthMm() {
    return widthMm;
  }

  /** Width between the margins, mm. */
  public double textWidthMm() {
    return widthMm - 2 * MARGIN_MM;
  }

  /** Height, mm. */
  public double heightMm() {
    return heightMm;
  }
}
