package caryatid.standing;

import caryatid.remark.Topic;

/** Why a recording gives no result. */
enum StandProblem implements Topic {
  NO_SUCH_PLATE,
  PLATE_NOT_NAMED,
  WHICH_FOOT,
  NOTHING_USABLE,
  TOO_SHORT,
  TOO_SHORT_BY_HAND,
  GAP_BY_HAND,
  FORCE_UNSTEADY,
  WANDERING,
  FEET_SWAPPED,
  MORE_THAN_WHOLE,
  PROSTHESIS_UNLOADED
}
