package caryatid.sheet;

import caryatid.remark.Topic;

/** Why a landmark cannot be brought into the person's frame. */
public enum Placing implements Topic {
  LANDMARK_UNKNOWN,
  LANDMARK_UNKNOWN_MEANT,
  LANDMARK_NOT_IN_PLANE,
  CIRCLE,
  LINE_UNKNOWN,
  LINE_UNKNOWN_MEANT,
  LINE_OF_OTHER_SENSE
}
