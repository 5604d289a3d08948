package caryatid.sheet.yaml;

import caryatid.remark.Topic;

/** What can be wrong with the way a YAML file is written. */
public enum YamlProblem implements Topic {
  UNREADABLE("Writing.UNREADABLE"),
  TOO_LARGE("Writing.TOO_LARGE"),
  NOT_UTF8("Writing.NOT_UTF8"),
  CONTROL_CHARACTER("Writing.CONTROL_CHARACTER"),
  TAB("Writing.TAB"),
  NOT_YAML("Writing.NOT_YAML"),
  OTHER_YAML("Writing.OTHER_YAML"),
  NOTHING_IN_IT("Writing.NOTHING_IN_IT"),
  TOO_DEEP("Writing.TOO_DEEP"),
  ANCHOR("Writing.ANCHOR"),
  TAG("Writing.TAG"),
  SECOND_DOCUMENT("Writing.SECOND_DOCUMENT"),
  OTHER_KIND("Writing.OTHER_KIND"),
  OTHER_VERSION("Writing.OTHER_VERSION"),
  NOT_A_SECTION("Writing.NOT_A_SECTION"),
  NOT_A_LIST("Writing.NOT_A_LIST"),
  NOT_A_SINGLE_VALUE("Writing.NOT_A_SINGLE_VALUE"),
  KEY_TWICE("Writing.KEY_TWICE"),
  MERGE_KEY("Writing.MERGE_KEY"),
  UNKNOWN_KEY("Writing.UNKNOWN_KEY"),
  UNKNOWN_KEY_MEANT("Writing.UNKNOWN_KEY_MEANT"),
  MISSING_KEY("Writing.MISSING_KEY"),
  NO_VALUE("Writing.NO_VALUE"),
  DECIMAL_COMMA("Writing.DECIMAL_COMMA"),
  NOT_A_NUMBER("Writing.NOT_A_NUMBER"),
  NOT_A_WHOLE_NUMBER("Writing.NOT_A_WHOLE_NUMBER"),
  OUT_OF_RANGE("Writing.OUT_OF_RANGE"),
  NOT_ABOVE("Writing.NOT_ABOVE"),
  NOT_A_TIME("Writing.NOT_A_TIME"),
  NOT_A_CHOICE("Writing.NOT_A_CHOICE");

  private final String code;

  YamlProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
