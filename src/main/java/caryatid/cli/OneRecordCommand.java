package caryatid.cli;

import picocli.CommandLine.Parameters;

/** What commands share that take the code of a record first. */
abstract class OneRecordCommand extends RecordSubcommand {
  @Parameters(
      index = "0",
      paramLabel = "CODE",
      description = "The record's code, such as K7-right; never a name.")
  private String code;

  String code() {
    return code;
  }
}
