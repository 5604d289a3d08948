package caryatid.cli;

import caryatid.remark.BadInput;
import caryatid.usecase.Records;
import caryatid.usecase.ShowRecord;
import caryatid.views.SinceVisit;
import caryatid.wording.VisitText;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What changed since the last visit. */
@Command(
    name = "since",
    mixinStandardHelpOptions = true,
    description =
        "Shows what was added to a record since a visit, what it changed, and what is open.")
final class RecordSinceCommand extends RecordSubcommand {
  @Parameters(index = "0", paramLabel = "CODE", description = CODE)
  private String code;

  @Option(
      names = "--day",
      paramLabel = "DAY",
      description =
          "The visit, such as 2026-03-04; the last one before the newest entry's day if left out.")
  private LocalDate day;

  @Override
  int run(Records records) throws BadInput {
    Optional<SinceVisit> since = ShowRecord.since(records, code, Optional.ofNullable(day));
    if (since.isEmpty()) {
      say("Since.nothing", code);
      return 0;
    }
    print(VisitText.lines(since.get(), ShowRecord.run(records, code).open(), wording()));
    return 0;
  }
}
