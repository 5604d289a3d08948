package caryatid.cli;

import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.Records;
import caryatid.usecase.UnpackRecord;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a packed record in. */
@Command(
    name = "unpack",
    mixinStandardHelpOptions = true,
    description = "Unpacks a packed record: checked and complete, or not at all.")
final class RecordUnpackCommand extends RecordSubcommand {
  @Parameters(paramLabel = "ZIP", description = "The packed record.")
  private Path zip;

  @Option(
      names = "--by",
      paramLabel = "INITIALS",
      defaultValue = "import",
      description = "Initials of the person doing it.")
  private String by;

  @Override
  int run(Records records) throws BadInput, StoreFailure {
    UnpackRecord.Unpacked record = UnpackRecord.run(records, zip, by, CaryatidCommand.FILES);
    say("Record.unpacked", record.code(), record.headDigest());
    return 0;
  }
}
