package caryatid.recording.model;

import java.util.Optional;

/** Units that cannot be converted to a force without a calibration. */
public enum RawUnit {
  VOLT("v mv uv volt volts"),
  CHARGE("pc"),
  COUNT("count counts bit bits lsb adc digit digits");

  private final String names;

  RawUnit(String names) {
    this.names = names;
  }

  public static Optional<RawUnit> named(String text) {
    return UnitNames.find(values(), unit -> unit.names, text);
  }
}
