package caryatid.loadline;

import caryatid.remark.Topic;

/** Why a stand gives no result. */
enum LoadLineProblem implements Topic {
  HAND_HOLDS,
  FLOOR_NOT_LEVEL,
  FEET_NOT_LEVEL
}
