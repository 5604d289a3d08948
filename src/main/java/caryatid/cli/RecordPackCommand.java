package caryatid.cli;

import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.PackRecord;
import caryatid.usecase.Records;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Packs a record. */
@Command(
    name = "pack",
    mixinStandardHelpOptions = true,
    description = "Packs a record as a zip (BagIt); `record unpack` unpacks it elsewhere.")
final class RecordPackCommand extends OneRecordCommand {
  @Parameters(
      index = "1",
      paramLabel = "ZIP",
      description = "The file to write; it must not exist yet.")
  private Path zip;

  @Override
  int run(Records records) throws BadInput, StoreFailure {
    PackRecord.run(records, code(), zip, wording(), CaryatidCommand.FILES);
    say("Record.packed", code(), zip);
    return 0;
  }
}
