package caryatid.cli;

import caryatid.fitting.FittingRecord;
import caryatid.fitting.Store;
import caryatid.remark.BadInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows a record. */
@Command(
    name = "show",
    mixinStandardHelpOptions = true,
    description = "Shows a record: its timeline, the offsets from stand to stand, makers' limits.")
final class RecordShowCommand extends RecordPart {
  @Parameters(paramLabel = "CODE", description = CODE)
  private String code;

  @Override
  int run(Store store) throws BadInput {
    FittingRecord record = store.read(code(code));
    RecordText.lines(record, wording()).forEach(out()::println);
    if (record.damage().isEmpty()) {
      return 0;
    }
    throw new BadInput(record.damage());
  }
}
