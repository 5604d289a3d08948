package caryatid.fitting;

import caryatid.remark.Topic;

/** What can be wrong with a form that was filled in. */
enum FormFault implements Topic {
  UNKNOWN_KEY,
  MISSING,
  /** Arguments: the field, its choices. */
  MISSING_CHOICE,
  NOT_WORDS,
  NOT_A_NUMBER,
  NOT_WHOLE,
  TOO_MANY_DIGITS,
  OUT_OF_RANGE,
  /** Arguments: the field, what was found, the field that it is at most, and that one's number. */
  OUT_OF_ORDER,
  NOT_YES_NO,
  NO_SUCH_CHOICE,
  NOT_ROWS,
  NOT_A_ROW,
  NOTHING_SAID,
  NOT_JSON,
  NOT_AN_ENTRY,
  NEWER_FORM,
  BAD_TIME,
  /** Arguments: the time, now. */
  TIME_AHEAD,
  /** Arguments: the time. */
  TIME_LONG_AGO,
  BAD_INITIALS,
  BAD_FILE_NAME
}
