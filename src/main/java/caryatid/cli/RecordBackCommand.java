package caryatid.cli;

import caryatid.remark.BadInput;
import caryatid.usecase.Records;
import caryatid.usecase.ShowRecord;
import caryatid.views.LastGood;
import caryatid.wording.VisitText;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** The way back to the last good setting. */
@Command(
    name = "back",
    mixinStandardHelpOptions = true,
    description =
        "Shows what to turn to get back to the settings of the last stand in which every tolerance"
            + " was met or accepted.")
final class RecordBackCommand extends RecordSubcommand {
  @Parameters(index = "0", paramLabel = "CODE", description = CODE)
  private String code;

  @Override
  int run(Records records) throws BadInput {
    Optional<LastGood> good = ShowRecord.lastGood(records, code);
    if (good.isEmpty()) {
      say("Back.none", code);
      return 0;
    }
    print(VisitText.lines(good.get(), wording()));
    return 0;
  }
}
