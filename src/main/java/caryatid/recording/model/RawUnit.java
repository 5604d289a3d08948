package caryatid.recording.model;

import java.util.Optional;

/** Units that say nothing of a force until a calibration is known. */
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
