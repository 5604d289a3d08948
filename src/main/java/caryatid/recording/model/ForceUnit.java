package caryatid.recording.model;

import caryatid.remark.Coded;
import java.util.Optional;

/** Units of force an export may use. */
public enum ForceUnit implements Coded {
  N("ForceUnit.N", "N", 1, "n newton newtons"),
  /** Kilogram-force. */
  KG("ForceUnit.KG", "kg", ForceUnit.STANDARD_GRAVITY, "kg kgf kp kilogram kilograms");

  /** Standard gravity, m/s2 (CGPM 1901): what a kilogram weighs, N. */
  public static final double STANDARD_GRAVITY = 9.80665;

  private final String code;
  private final String symbol;
  private final double newton;
  private final String names;

  ForceUnit(String code, String symbol, double newton, String names) {
    this.code = code;
    this.symbol = symbol;
    this.newton = newton;
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

  /** Newtons in one of the unit. */
  public double newton() {
    return newton;
  }

  public static Optional<ForceUnit> named(String text) {
    return UnitNames.find(values(), unit -> unit.names, text);
  }
}
