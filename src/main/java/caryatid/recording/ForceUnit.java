package caryatid.recording;

/** Units of force an export may use. */
public enum ForceUnit {
  N(1),
  /** Kilogram-force, standard gravity 9.80665 m/s2 (CGPM 1901). */
  KG(9.80665);

  private final double newton;

  ForceUnit(double newton) {
    this.newton = newton;
  }

  /** Newtons in one of the unit. */
  public double newton() {
    return newton;
  }
}
