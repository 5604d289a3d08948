package caryatid.entry.form;

import caryatid.remark.Topic;

/** What can be wrong with a form that was filled in. */
public enum FormFault implements Topic {
  UNKNOWN_KEY("FormFault.UNKNOWN_KEY"),
  MISSING("FormFault.MISSING"),
  /** Arguments: the field, its choices. */
  MISSING_CHOICE("FormFault.MISSING_CHOICE"),
  NOT_WORDS("FormFault.NOT_WORDS"),
  NOT_A_NUMBER("FormFault.NOT_A_NUMBER"),
  NOT_WHOLE("FormFault.NOT_WHOLE"),
  TOO_MANY_DIGITS("FormFault.TOO_MANY_DIGITS"),
  OUT_OF_RANGE("FormFault.OUT_OF_RANGE"),
  /** Arguments: the field, what was found, the field that it is at most, and that one's number. */
  OUT_OF_ORDER("FormFault.OUT_OF_ORDER"),
  NOT_YES_NO("FormFault.NOT_YES_NO"),
  NO_SUCH_CHOICE("FormFault.NO_SUCH_CHOICE"),
  NOT_A_DAY("FormFault.NOT_A_DAY"),
  /** Arguments: the field. */
  COMPUTED("FormFault.COMPUTED"),
  NOT_ROWS("FormFault.NOT_ROWS"),
  NOT_A_ROW("FormFault.NOT_A_ROW"),
  NOTHING_SAID("FormFault.NOTHING_SAID"),
  NOT_JSON("FormFault.NOT_JSON"),
  NOT_AN_ENTRY("FormFault.NOT_AN_ENTRY"),
  NEWER_FORM("FormFault.NEWER_FORM"),
  BAD_TIME("FormFault.BAD_TIME"),
  /** Arguments: the time, now. */
  TIME_AHEAD("FormFault.TIME_AHEAD"),
  /** Arguments: the time. */
  TIME_LONG_AGO("FormFault.TIME_LONG_AGO"),
  BAD_INITIALS("FormFault.BAD_INITIALS"),
  BAD_FILE_NAME("FormFault.BAD_FILE_NAME");

  private final String code;

  FormFault(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
