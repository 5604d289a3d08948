package caryatid.cli;

import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.fitting.Addition;
import caryatid.fitting.Store;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
      converter = Moment.class,
      description = "When, with the offset from UTC; now if left out.")
  private OffsetDateTime at;

  @Option(
      names = "--sure",
      description = "The reason says nothing about who the wearer is, whatever it looks like.")
  private boolean sure;

  @Override
  int run(Store store) throws BadInput, StoreFailure {
    OffsetDateTime now = CaryatidCommand.now(spec());
    Answers said = new Answers(Map.of("why", new Answers.Value.Words(why)));
    Addition stone =
        new Addition(
                EntryKind.ERASURE, at == null ? now : at, by, Optional.empty(), said, List.of())
            .checked(now);
    if (!sure) {
      stone.anonymous();
    }
    store.erase(code(code), stone.at(), by, why);
    say("Record.erased", code);
    return 0;
  }
}
