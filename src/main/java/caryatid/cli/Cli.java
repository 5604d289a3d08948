package caryatid.cli;

import caryatid.remark.Topic;

/** What can go wrong at the command line. */
enum Cli implements Topic {
  NOT_REPRODUCED("Cli.NOT_REPRODUCED"),
  NOT_AN_ASSIGNMENT("Cli.NOT_AN_ASSIGNMENT"),
  /** Arguments: the key. */
  GIVEN_TWICE("Cli.GIVEN_TWICE"),
  STORAGE_ROOT("Cli.STORAGE_ROOT");

  private final String code;

  Cli(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
