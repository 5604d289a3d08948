package caryatid.usecase;

import caryatid.remark.Topic;

/** Why values given as arguments do not make an entry. */
enum AssignmentProblem implements Topic {
  NOT_AN_ASSIGNMENT("Cli.NOT_AN_ASSIGNMENT"),
  /** Arguments: the key. */
  GIVEN_TWICE("Cli.GIVEN_TWICE");

  private final String code;

  AssignmentProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
