package caryatid.cli;

import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.Records;
import caryatid.usecase.UnpackRecord;
import caryatid.wording.RecordText;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Restores all records of a backup. */
@Command(
    name = "restore",
    mixinStandardHelpOptions = true,
    description =
        "Restores all records of a backup to an empty folder of records: checked and complete, or"
            + " not at all.")
final class RecordRestoreCommand extends RecordSubcommand {
  @Parameters(paramLabel = "FOLDER", description = "The backup.")
  private Path folder;

  @Option(names = "--by", paramLabel = "INITIALS", description = "Initials of the person doing it.")
  private String by;

  @Override
  int run(Records records) throws BadInput, StoreFailure {
    int restored = UnpackRecord.all(records, folder, by == null ? "" : by).size();
    say("Record.restored", RecordText.records(restored, wording()), records.folder());
    return 0;
  }
}
