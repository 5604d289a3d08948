package caryatid.usecase;

import caryatid.remark.Topic;

/** Why inputs that are valid one by one cannot be checked together. */
enum CheckProblem implements Topic {
  LINES_WITHOUT_DESCRIPTION("CheckProblem.LINES_WITHOUT_DESCRIPTION"),
  SAME_NAME("CheckProblem.SAME_NAME"),
  SAME_RECORDING("CheckProblem.SAME_RECORDING"),
  /** An export without columns, for which no plate can be remembered. */
  NO_COLUMNS("CheckProblem.NO_COLUMNS"),
  /** Arguments: the file name that the remembered description had. */
  ANOTHER_PLATE("CheckProblem.ANOTHER_PLATE"),
  /** The sheet is of a time to come. Arguments: its time, the time now. */
  AT_AHEAD("CheckProblem.AT_AHEAD");

  private final String code;

  CheckProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
