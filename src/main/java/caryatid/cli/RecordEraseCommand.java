package caryatid.cli;

import caryatid.fitting.Store;
import caryatid.remark.BadInput;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Erases a record. */
@Command(
    name = "erase",
    mixinStandardHelpOptions = true,
    description =
        "Erases a whole record for good, on request; only when, by whom and why is left. Copies and"
            + " backups elsewhere are not touched.")
final class RecordEraseCommand extends RecordPart {
  @Parameters(paramLabel = "CODE", description = CODE)
  private String code;

  @Option(
      names = "--by",
      required = true,
      paramLabel = "INITIALS",
      description = "Initials of who does it.")
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

  @Override
  int run(Store store) throws BadInput {
    store.erase(
        code(code),
        at == null
            ? OffsetDateTime.now(ZoneId.systemDefault()).truncatedTo(ChronoUnit.SECONDS)
            : at,
        by,
        why);
    say("Record.erased", code);
    return 0;
  }
}
