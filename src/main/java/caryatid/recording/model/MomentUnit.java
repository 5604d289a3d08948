package caryatid.recording.model;

import caryatid.remark.Coded;
import java.util.Optional;

/** Units of moment an export may use. */
public enum MomentUnit implements Coded {
  N_MM("MomentUnit.N_MM", 1, "nmm mmn newtonmillimetre newtonmillimeter"),
  N_M("MomentUnit.N_M", 1000, "nm newtonmetre newtonmeter");

  private final String code;
  private final double newtonMm;
  private final String names;

  MomentUnit(String code, double newtonMm, String names) {
    this.code = code;
    this.newtonMm = newtonMm;
    this.names = names;
  }

  @Override
  public String code() {
    return code;
  }

  /** Newton-millimetres in one of the unit. */
  public double newtonMm() {
    return newtonMm;
  }

  public static Optional<MomentUnit> named(String text) {
    return UnitNames.find(values(), unit -> unit.names, text);
  }
}
