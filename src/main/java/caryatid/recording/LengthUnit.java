package caryatid.recording;

import java.util.Optional;

/** Units of length an export may use. */
public enum LengthUnit {
  MM(1, "mm millimetre millimeter millimetres millimeters"),
  CM(10, "cm centimetre centimeter centimetres centimeters"),
  M(1000, "m metre meter metres meters"),
  /** International yard and pound agreement, 1959. */
  INCH(25.4, "in inch inches \"");

  private final double mm;
  private final String names;

  LengthUnit(double mm, String names) {
    this.mm = mm;
    this.names = names;
  }

  /** Millimetres in one of the unit. */
  public double mm() {
    return mm;
  }

  static Optional<LengthUnit> named(String text) {
    return UnitNames.find(values(), unit -> unit.names, text);
  }
}
