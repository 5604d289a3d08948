package caryatid.usecase;

import caryatid.remark.Topic;

/** Why inputs that are valid one by one cannot be checked together. */
public enum CheckProblem implements Topic {
  LINES_WITHOUT_DESCRIPTION("CheckProblem.LINES_WITHOUT_DESCRIPTION"),
  SAME_NAME("CheckProblem.SAME_NAME"),
  SAME_RECORDING("CheckProblem.SAME_RECORDING"),
  /** Arguments: the recording for which a stretch is set, those that are there. */
  STRETCH_WITHOUT_RECORDING("CheckProblem.STRETCH_WITHOUT_RECORDING"),
  /** A stretch is set in the sheet and beside it. Argument: the recording. */
  STRETCH_SET_TWICE("CheckProblem.STRETCH_SET_TWICE"),
  /** An export without columns, for which no plate can be remembered. */
  NO_COLUMNS("CheckProblem.NO_COLUMNS"),
  /** Arguments: the file name that the remembered description had. */
  ANOTHER_PLATE("CheckProblem.ANOTHER_PLATE"),
  /** The sheet is of a time to come. Arguments: its time, the time now. */
  AT_AHEAD("CheckProblem.AT_AHEAD"),
  /** An earlier state of another wearer. Arguments: its wearer, the sheet's. */
  EARLIER_OTHER_WEARER("CheckProblem.EARLIER_OTHER_WEARER"),
  /** An earlier state that is not before the sheet. Arguments: its time, the sheet's. */
  EARLIER_NOT_BEFORE("CheckProblem.EARLIER_NOT_BEFORE"),
  /** An earlier state that tells nothing of the sheet's leg. Argument: the leg. */
  EARLIER_OTHER_LEG("CheckProblem.EARLIER_OTHER_LEG");

  private final String code;

  CheckProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
