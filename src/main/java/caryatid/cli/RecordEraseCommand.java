package caryatid.cli;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.usecase.EraseRecord;
import caryatid.usecase.Records;
import caryatid.usecase.file.FileProblem;
import caryatid.web.Window;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Erases a record. */
@Command(
    name = "erase",
    mixinStandardHelpOptions = true,
    description =
        "Erases a whole record for good, on request; only when, by whom and why remains. Copies and"
            + " backups elsewhere are not touched.")
final class RecordEraseCommand extends OneRecordCommand {
  @Option(
      names = "--by",
      required = true,
      paramLabel = "INITIALS",
      description = "Initials of the person doing it.")
  private String by;

  @Option(
      names = "--because",
      required = true,
      paramLabel = "WHY",
      description = "Why; say nothing that identifies the wearer.")
  private String why;

  @Option(
      names = "--at",
      paramLabel = "TIME",
      description = "When, with the offset from UTC; now if left out.")
  private OffsetDateTime at;

  @Option(
      names = "--sure",
      description = "The reason says nothing about who the wearer is, whatever it looks like.")
  private boolean sure;

  @Override
  int run(Records records) throws BadInput, StoreFailure {
    removeWindowFiles(OpenCommand.folder());
    EraseRecord.run(
        records, code(), new EraseRecord.ErasureReason(Optional.ofNullable(at), by, why, sure));
    say("Record.erased", code());
    return 0;
  }

  /** Files that a page sent and a killed window left may be of this record. */
  private static void removeWindowFiles(Path folder) throws StoreFailure {
    try {
      Window.removeLeft(folder);
    } catch (IOException e) {
      throw new StoreFailure(
          Problem.at(Place.of(folder.toString()), FileProblem.CANNOT_WRITE, Argument.why(e)));
    }
  }
}
