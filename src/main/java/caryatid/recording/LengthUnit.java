package caryatid.recording;

/** Units of length an export may use. */
public enum LengthUnit {
  MM(1),
  CM(10),
  M(1000),
  INCH(25.4);

  private final double mm;

  LengthUnit(double mm) {
    this.mm = mm;
  }

  /**
   * Millimetres in one of the unit; the inch after the international yard and pound agreement,
   * 1959.
   */
  public double mm() {
    return mm;
  }
}
