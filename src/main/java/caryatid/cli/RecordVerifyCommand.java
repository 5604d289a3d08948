package caryatid.cli;

import caryatid.fitting.Store;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Verifies records. */
@Command(
    name = "verify",
    mixinStandardHelpOptions = true,
    description = "Checks every byte of records against their sums, and names what is hurt.")
final class RecordVerifyCommand extends RecordPart {
  @Parameters(
      paramLabel = "CODE",
      arity = "0..*",
      description = "The records; all if none is named.")
  private List<String> codes = new ArrayList<>();

  @Override
  int run(Store store) throws BadInput, StoreFailure {
    List<Problem> found = new ArrayList<>();
    List<String> named = codes.isEmpty() ? store.codes() : codes;
    if (named.isEmpty()) {
      say("Record.none", records().folder());
      return 1;
    }
    for (String code : named) {
      List<Problem> here = store.verify(code(code));
      found.addAll(here);
      if (here.isEmpty()) {
        Optional<String> erased = RecordText.erased(store, code(code), wording());
        String entries = RecordText.entries(store.read(code(code)).size(), wording());
        out().println(erased.orElse(wording().fill("Record.sound", texts(code, entries))));
      }
    }
    return sound(found);
  }
}
