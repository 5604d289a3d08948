package caryatid.recording.model;

import caryatid.remark.Coded;
import java.util.Optional;

/** Units of moment an export may use. */
public enum MomentUnit implements Coded {
  N_MM("MomentUnit.N_MM", "N mm", 1, "nmm mmn newtonmillimetre newtonmillimeter"),
  N_M("MomentUnit.N_M", "N m", 1000, "nm newtonmetre newtonmeter");

  private final String code;
  private final String symbol;
  private final double newtonMm;
  private final String names;

  MomentUnit(String code, String symbol, double newtonMm, String names) {
    this.code = code;
    this.symbol = symbol;
    this.newtonMm = newtonMm;
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

  /** Newton-millimetres in one of the unit. */
  public double newtonMm() {
    return newtonMm;
  }

  public static Optional<MomentUnit> named(String text) {
    return UnitNames.find(values(), unit -> unit.names, text);
  }
}
