package caryatid.recording;

import java.util.Optional;

/** Units of moment an export may use. */
public enum MomentUnit {
  N_MM(1, "nmm mmn newtonmillimetre newtonmillimeter"),
  N_M(1000, "nm newtonmetre newtonmeter");

  private final double newtonMm;
  private final String names;

  MomentUnit(double newtonMm, String names) {
    this.newtonMm = newtonMm;
    this.names = names;
  }

  /** Newton-millimetres in one of the unit. */
  public double newtonMm() {
    return newtonMm;
  }

  static Optional<MomentUnit> named(String text) {
    return UnitNames.find(values(), unit -> unit.names, text);
  }
}
