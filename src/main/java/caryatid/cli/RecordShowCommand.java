package caryatid.cli;

import caryatid.remark.BadInput;
import caryatid.usecase.Records;
import caryatid.usecase.ShowRecord;
import caryatid.views.RecordView;
import caryatid.wording.RecordText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows a record. */
@Command(
    name = "show",
    mixinStandardHelpOptions = true,
    description = "Shows a record: its timeline, the offsets from stand to stand, makers' limits.")
final class RecordShowCommand extends RecordSubcommand {
  @Parameters(paramLabel = "CODE", description = CODE)
  private String code;

  @Override
  int run(Records records) throws BadInput {
    RecordView view = ShowRecord.run(records, code);
    print(RecordText.lines(view, wording()));
    return sound(view.notShown());
  }
}
