package caryatid.cli;

import caryatid.fitting.Store;
import caryatid.remark.BadInput;
import java.util.List;
import picocli.CommandLine.Command;

/** Lists the records. */
@Command(
    name = "list",
    mixinStandardHelpOptions = true,
    description = "Lists the codes of all records.")
final class RecordListCommand extends RecordPart {
  @Override
  int run(Store store) throws BadInput {
    List<String> codes = store.codes();
    codes.forEach(out()::println);
    if (codes.isEmpty()) {
      say("Record.none", records().folder());
    }
    return 0;
  }
}
