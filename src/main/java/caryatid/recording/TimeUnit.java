package caryatid.recording;

/** Units of time an export may use. */
public enum TimeUnit {
  S(1),
  MS(1e-3),
  US(1e-6);

  private final double seconds;

  TimeUnit(double seconds) {
    this.seconds = seconds;
  }

  /** Seconds in one of the unit. */
  public double seconds() {
    return seconds;
  }
}
