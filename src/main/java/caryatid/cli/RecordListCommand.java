package caryatid.cli;

import caryatid.fitting.Store;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import java.util.List;
import picocli.CommandLine.Command;

/** Lists the records. */
@Command(
    name = "list",
    mixinStandardHelpOptions = true,
    description = "Lists the codes of all records, and of erased ones when and why.")
final class RecordListCommand extends RecordPart {
  @Override
  int run(Store store) throws BadInput, StoreFailure {
    List<String> codes = store.codes();
    for (String code : codes) {
      out().println(line(store, code));
    }
    if (codes.isEmpty()) {
      say("Record.none", records().folder());
    }
    return 0;
  }

  /** What is hurt is for `verify` to say; the code is listed all the same. */
  private String line(Store store, String code) {
    try {
      return RecordText.erased(store, code(code), wording()).orElse(code);
    } catch (BadInput hurt) {
      return code;
    }
  }
}
