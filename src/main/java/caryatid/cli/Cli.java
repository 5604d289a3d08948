package caryatid.cli;

import caryatid.remark.Topic;

/** What can go wrong at the command line. */
enum Cli implements Topic {
  NO_SUCH_FILE("Cli.NO_SUCH_FILE"),
  IS_A_FOLDER("Cli.IS_A_FOLDER"),
  NO_ORDINARY_FILE("Cli.NO_ORDINARY_FILE"),
  NOT_READABLE("Cli.NOT_READABLE"),
  OUTPUT_EXISTS("Cli.OUTPUT_EXISTS"),
  CANNOT_WRITE("Cli.CANNOT_WRITE"),
  NOT_A_FOLDER("Cli.NOT_A_FOLDER"),
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
