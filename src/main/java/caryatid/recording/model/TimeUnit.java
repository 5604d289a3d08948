package caryatid.recording.model;

import caryatid.remark.Coded;
import java.util.Optional;

/** Units of time an export may use. */
public enum TimeUnit implements Coded {
  S("TimeUnit.S", 1, "s sec secs second seconds"),
  MS("TimeUnit.MS", 1e-3, "ms msec millisecond milliseconds"),
  US("TimeUnit.US", 1e-6, "us usec microsecond microseconds");

  private final String code;
  private final double seconds;
  private final String names;

  TimeUnit(String code, double seconds, String names) {
    this.code = code;
    this.seconds = seconds;
    this.names = names;
  }

  @Override
  public String code() {
    return code;
  }

  /** Seconds in one of the unit. */
  public double seconds() {
    return seconds;
  }

  public static Optional<TimeUnit> named(String text) {
    return UnitNames.find(values(), unit -> unit.names, text);
  }
}
