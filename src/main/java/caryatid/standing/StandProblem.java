package caryatid.standing;

import caryatid.remark.Topic;

/** Why a recording gives no result. */
enum StandProblem implements Topic {
  NO_SUCH_PLATE("StandProblem.NO_SUCH_PLATE"),
  PLATE_NOT_NAMED("StandProblem.PLATE_NOT_NAMED"),
  WHICH_FOOT("StandProblem.WHICH_FOOT"),
  NOTHING_USABLE("StandProblem.NOTHING_USABLE"),
  TOO_SHORT("StandProblem.TOO_SHORT"),
  /** Arguments: shortest stretch, the recording's length. */
  SHORT_RECORDING("StandProblem.SHORT_RECORDING"),
  TOO_SHORT_BY_HAND("StandProblem.TOO_SHORT_BY_HAND"),
  GAP_BY_HAND("StandProblem.GAP_BY_HAND"),
  FORCE_UNSTEADY("StandProblem.FORCE_UNSTEADY"),
  /** Arguments: line, three limits and what was found of each, as far as it was recorded. */
  MOVING("StandProblem.MOVING"),
  /** Arguments: smallest mass, mass. */
  LIGHT_BODY("StandProblem.LIGHT_BODY"),
  WANDERING("StandProblem.WANDERING"),
  /** Arguments: plate, smallest standard deviation, length of stretch, standard deviation. */
  STILL_SIDEWAYS("StandProblem.STILL_SIDEWAYS"),
  /** The same fore and aft. */
  STILL_FORE_AND_AFT("StandProblem.STILL_FORE_AND_AFT"),
  /** Arguments: plate, horizontal force, vertical force, largest share in percent, share. */
  LEANING_FORCE("StandProblem.LEANING_FORCE"),
  /** Argument: the moment. */
  NOT_READ_THEN("StandProblem.NOT_READ_THEN"),
  FEET_SWAPPED("StandProblem.FEET_SWAPPED"),
  /** Markers contradict the stance; arguments: side, plate it was on. */
  FEET_BY_MARKERS("StandProblem.FEET_BY_MARKERS"),
  MORE_THAN_WHOLE("StandProblem.MORE_THAN_WHOLE"),
  PROSTHESIS_UNLOADED("StandProblem.PROSTHESIS_UNLOADED");

  private final String code;

  StandProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
