package caryatid.cli;

import caryatid.remark.StoreFailure;
import caryatid.usecase.ListRecords;
import caryatid.usecase.Records;
import caryatid.wording.RecordText;
import java.util.List;
import picocli.CommandLine.Command;

/** Lists the records. */
@Command(
    name = "list",
    mixinStandardHelpOptions = true,
    description = "Lists the codes of all records, and of erased ones when and why.")
final class RecordListCommand extends RecordSubcommand {
  @Override
  int run(Records records) throws StoreFailure {
    List<ListRecords.Listed> all = ListRecords.run(records);
    all.forEach(this::print);
    if (all.isEmpty()) {
      say("Record.none", records.folder());
    }
    return 0;
  }

  private void print(ListRecords.Listed record) {
    String line =
        record
            .erasure()
            .map(erasure -> RecordText.erased(record.code(), erasure, wording()))
            .orElse(record.code());
    print(List.of(line));
  }
}
