package caryatid.cli;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.usecase.Records;
import caryatid.wording.Wording;
import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Where the fitting records lie; the same option for every command that keeps or shows them. */
final class RecordsFolder {
  @Option(
      names = "--records",
      paramLabel = "FOLDER",
      defaultValue = "${env:CARYATID_RECORDS:-${sys:user.home}/caryatid-records}",
      description =
          "The folder of records; if left out, the environment variable CARYATID_RECORDS names it,"
              + " else caryatid-records in your home folder.")
  private Path folder;

  /**
   * The records, for whoever neither keeps nor shows one of them.
   *
   * @throws BadInput if the folder is the storage root instead of the one it lies in
   */
  Records quietly(CommandSpec command) throws BadInput {
    return Records.in(folder, CaryatidCommand.clock(command));
  }

  /**
   * The records, with a word of warning where its folder is on a network drive, or open to all.
   *
   * @throws BadInput if the folder is the storage root instead of the one it lies in
   */
  Records open(CommandSpec command, Wording wording) throws BadInput {
    Records records = Records.in(folder, CaryatidCommand.clock(command));
    records
        .networkDrive()
        .ifPresent(
            type ->
                command
                    .commandLine()
                    .getErr()
                    .println(
                        wording.fill(
                            "Record.network",
                            Argument.text(folder.toString()),
                            Argument.text(type))));
    if (records.isOpen()) {
      PrintWriter err = command.commandLine().getErr();
      err.println(wording.fill("Record.open", Argument.text(folder.toString())));
    }
    return records;
  }
}
