package caryatid.cli;

import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.NextStand;
import caryatid.usecase.Records;
import caryatid.wording.RecordText;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes the trial sheet for the next stand. */
@Command(
    name = "next",
    mixinStandardHelpOptions = true,
    description =
        "Writes the trial sheet for the next stand; targets and landmarks carry over from the last"
            + " one.")
final class RecordNextCommand extends RecordSubcommand {
  @Parameters(index = "0", paramLabel = "CODE", description = CODE)
  private String code;

  @Parameters(
      index = "1",
      paramLabel = "SHEET",
      description = "The file to write; it must not be there yet.")
  private Path sheet;

  @Override
  int run(Records records) throws BadInput, StoreFailure {
    NextStand next = NextStand.of(records, code);
    print(RecordText.remarks(next.lost(), wording()));
    next.write(sheet, CaryatidCommand.FILES);
    say("Record.next", sheet);
    return sound(next.damage());
  }
}
