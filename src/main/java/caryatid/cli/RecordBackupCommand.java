package caryatid.cli;

import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.usecase.PackRecord;
import caryatid.usecase.Records;
import caryatid.wording.RecordText;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Backs all records up. */
@Command(
    name = "backup",
    mixinStandardHelpOptions = true,
    description =
        "Backs all records up into a new folder, each as a zip, and checks every byte of what was"
            + " written.")
final class RecordBackupCommand extends RecordSubcommand {
  @Parameters(paramLabel = "FOLDER", description = "The folder; it must not exist yet.")
  private Path folder;

  @Override
  int run(Records records) throws BadInput, StoreFailure {
    var made = PackRecord.all(records, folder, wording());
    say("Record.backedUp", RecordText.records(made.codes().size(), wording()), folder);
    List<Problem> damage = made.damage();
    return sound(damage);
  }
}
