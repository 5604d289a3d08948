package caryatid.plate;

import caryatid.remark.Topic;

/** What a proof finds wrong with a plate's description, or with the proof itself. */
public enum PlateFault implements Topic {
  /** Arguments: the plate, how many marks it has, how many it takes. */
  FEW_MARKS("PlateFault.FEW_MARKS"),
  /** Arguments: the plate. */
  MARKS_TOO_CLOSE("PlateFault.MARKS_TOO_CLOSE"),
  /** Arguments: the plate, the axes that would be right. */
  AXES("PlateFault.AXES"),
  /** A direction is dead, or both are one; arguments: the plate. */
  ONE_DIRECTION("PlateFault.ONE_DIRECTION"),
  /** Arguments: the plate, how far off places are in the mean, the most, mm. */
  PLACES_OFF("PlateFault.PLACES_OFF"),
  /** Arguments: the plate, the factor. */
  PLACE_UNIT("PlateFault.PLACE_UNIT"),
  /** No unit explains it; arguments: the plate, the factor. */
  PLACE_FACTOR("PlateFault.PLACE_FACTOR"),
  /** Arguments: the plate, the factor. */
  FORCE_UNIT("PlateFault.FORCE_UNIT"),
  /** No unit explains it; arguments: the plate, the factor. */
  FORCE_FACTOR("PlateFault.FORCE_FACTOR"),
  /** A weight that more than one plate bears; arguments: the place, right and anterior, mm. */
  TWO_PLATES("PlateFault.TWO_PLATES"),
  /** Arguments: how far anterior, how far right, mm. */
  PERSON_FORWARD("PlateFault.PERSON_FORWARD"),
  /** Arguments: the foot, how far right, mm. */
  PERSON_SIDE("PlateFault.PERSON_SIDE"),
  /** Arguments: the least movement, mm. */
  PERSON_STILL("PlateFault.PERSON_STILL"),
  /** A recording without a load at rest, or of a plate in one direction; arguments: its name. */
  NO_LOAD("PlateFault.NO_LOAD"),
  /** A recording named twice; arguments: its name. */
  RECORDING_TWICE("PlateFault.RECORDING_TWICE"),
  /** Two files with the same content; arguments: what the two recordings are called. */
  RECORDING_COPIED("PlateFault.RECORDING_COPIED"),
  /** A recording that was not found; arguments: its name. */
  NO_RECORDING("PlateFault.NO_RECORDING"),
  /** A description without axes. */
  NO_AXES("PlateFault.NO_AXES");

  private final String code;

  PlateFault(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
