package caryatid.recording;

/** Units of moment an export may use. */
public enum MomentUnit {
  N_MM(1),
  N_M(1000);

  private final double newtonMm;

  MomentUnit(double newtonMm) {
    this.newtonMm = newtonMm;
  }

  /** Newton-millimetres in one of the unit. */
  public double newtonMm() {
    return newtonMm;
  }
}
