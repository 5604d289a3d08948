package caryatid.cli;

import caryatid.remark.Topic;

/** What can go wrong at the command line. */
enum CliProblem implements Topic {
  NOT_REPRODUCED("Cli.NOT_REPRODUCED");

  private final String code;

  CliProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
