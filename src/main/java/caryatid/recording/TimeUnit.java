package caryatid.recording;

import java.util.Optional;

/** Units of time an export may use. */
public enum TimeUnit {
  S(1, "s sec secs second seconds"),
  MS(1e-3, "ms msec millisecond milliseconds"),
  US(1e-6, "us usec microsecond microseconds");

  private final double seconds;
  private final String names;

  TimeUnit(double seconds, String names) {
    this.seconds = seconds;
    this.names = names;
  }

  /** Seconds in one of the unit. */
  public double seconds() {
    return seconds;
  }

  static Optional<TimeUnit> named(String text) {
    return UnitNames.find(values(), unit -> unit.names, text);
  }
}
