package caryatid.sheet;

import caryatid.remark.Topic;

/** What can be wrong with the way a YAML file is written. */
public enum Writing implements Topic {
  UNREADABLE,
  TOO_LARGE,
  NOT_UTF8,
  CONTROL_CHARACTER,
  TAB,
  NOT_YAML,
  NOTHING_IN_IT,
  TOO_DEEP,
  ANCHOR,
  TAG,
  SECOND_DOCUMENT,
  OTHER_KIND,
  OTHER_VERSION,
  NOT_A_SECTION,
  NOT_A_LIST,
  NOT_A_SINGLE_VALUE,
  KEY_TWICE,
  MERGE_KEY,
  UNKNOWN_KEY,
  UNKNOWN_KEY_MEANT,
  MISSING_KEY,
  NO_VALUE,
  NOT_A_NUMBER,
  NOT_A_WHOLE_NUMBER,
  OUT_OF_RANGE,
  NOT_ABOVE,
  NOT_A_TIME,
  NOT_A_CHOICE
}
