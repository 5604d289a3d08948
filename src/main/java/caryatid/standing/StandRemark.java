package caryatid.standing;

import caryatid.remark.Topic;
import caryatid.remark.Weight;

/** Remarks on a stand. */
public enum StandRemark implements Topic {
  PROSTHESIS_LITTLE_LOADED("StandRemark.PROSTHESIS_LITTLE_LOADED", Weight.IMPORTANT),
  NEARLY_WHOLE_LOAD("StandRemark.NEARLY_WHOLE_LOAD", Weight.IMPORTANT),
  BODY_MASS_DIFFERS("StandRemark.BODY_MASS_DIFFERS", Weight.IMPORTANT),
  HARDLY_ANY_SWAY("StandRemark.HARDLY_ANY_SWAY", Weight.IMPORTANT),
  MUCH_SWAY("StandRemark.MUCH_SWAY", Weight.IMPORTANT),
  /**
   * A vertical force that is neither as still as in plain standing nor as unsteady as is refused.
   */
  FORCE_VARIES("StandRemark.FORCE_VARIES", Weight.IMPORTANT),
  /** Arguments: line, plane, standard deviation, smallest one, length. */
  SMALL_MOVEMENT("StandRemark.SMALL_MOVEMENT", Weight.IMPORTANT),
  /** Arguments: line, plane, mean speed, limit. */
  SLOW_MOVEMENT("StandRemark.SLOW_MOVEMENT", Weight.IMPORTANT),
  /** The same. */
  FAST_MOVEMENT("StandRemark.FAST_MOVEMENT", Weight.IMPORTANT),
  /** Arguments: line, speed fore and aft over that sideways, smallest and largest one. */
  DIRECTIONS_APART("StandRemark.DIRECTIONS_APART", Weight.IMPORTANT),
  /** Arguments: line, mass. */
  LIGHT_LOAD("StandRemark.LIGHT_LOAD", Weight.IMPORTANT),
  /** Arguments: line, plane, standard deviation, smallest one. */
  SMALL_PUSH("StandRemark.SMALL_PUSH", Weight.IMPORTANT),
  /** Arguments: line, angle. */
  MUCH_LEAN("StandRemark.MUCH_LEAN", Weight.IMPORTANT),
  /** Within the part used; arguments: line, size. */
  DRIFT_INSIDE("StandRemark.DRIFT_INSIDE", Weight.NOTE),
  /** Within the part used; arguments: line, size, time from the recording's start. */
  SHIFT_INSIDE("StandRemark.SHIFT_INSIDE", Weight.NOTE),
  SHORT_STRETCH("StandRemark.SHORT_STRETCH", Weight.NOTE),
  SLOWER_UNSEEN("StandRemark.SLOWER_UNSEEN", Weight.NOTE),
  LOW_RATE("StandRemark.LOW_RATE", Weight.NOTE),
  SHARE_UNKNOWN("StandRemark.SHARE_UNKNOWN", Weight.NOTE),
  /** No force was recorded. */
  SHARE_WITHOUT_FORCE("StandRemark.SHARE_WITHOUT_FORCE", Weight.NOTE),
  SHEAR_OFFSET("StandRemark.SHEAR_OFFSET", Weight.NOTE),
  SET_BY_HAND("StandRemark.SET_BY_HAND", Weight.NOTE);

  private final String code;
  private final Weight weight;

  StandRemark(String code, Weight weight) {
    this.code = code;
    this.weight = weight;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public Weight weight() {
    return weight;
  }
}
