package caryatid.report.pages;

/** Sizes of paper (ISO 216; ANSI/ASME Y14.1). */
public enum Paper {
  A4(210, 297),
  LETTER(215.9, 279.4);

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

  /** Height, mm. */
  public double heightMm() {
    return heightMm;
  }
}
