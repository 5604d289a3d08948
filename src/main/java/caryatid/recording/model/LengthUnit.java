package caryatid.recording.model;

import caryatid.remark.Coded;
import java.util.Optional;

/** Units of length an export may use. */
public enum LengthUnit implements Coded {
  MM("LengthUnit.MM", "mm", 1, "mm millimetre millimeter millimetres millimeters"),
  CM("LengthUnit.CM", "cm", 10, "cm centimetre centimeter centimetres centimeters"),
  M("LengthUnit.M", "m", 1000, "m metre meter metres meters"),
  /** International yard and pound agreement, 1959. */
  INCH("LengthUnit.INCH", "inch", 25.4, "in inch inches \"");

  private final String code;
  private final String symbol;
  private final double mm;
  private final String names;

  LengthUnit(String code, String symbol, double mm, String names) {
    this.code = code;
    this.symbol = symbol;
    this.mm = mm;
    this.names = names;
  }

  @Override
  public String code() {
    return code;
  }

  /** As a plate description has it. */
  public String symbol() {
    return symbol;
  }

  /** Millimetres in one of the unit. */
  public double mm() {
    return mm;
  }

  public static Optional<LengthUnit> named(String text) {
    return UnitNames.find(values(), unit -> unit.names, text);
  }
}
