package caryatid.cli;

import caryatid.entry.EntryKind;
import caryatid.fitting.Addition;
import caryatid.fitting.RecordCode;
import caryatid.fitting.Store;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Starts a record. */
@Command(
    name = "start",
    mixinStandardHelpOptions = true,
    description =
        "Starts the record of a prosthesis, such as: start K7-right --by AB wearer=K7 side=right"
            + " level=transtibial")
final class RecordStartCommand extends RecordPart {
  @Parameters(index = "0", paramLabel = "CODE", description = CODE)
  private String code;

  @Parameters(
      index = "1..*",
      paramLabel = "KEY=VALUE",
      description = "What it says: wearer, side, level, body-mass-kg, mobility-grade, note.")
  private List<String> values = new ArrayList<>();

  @Mixin private RecordEntryOptions entry;

  @Override
  int run(Store store) throws BadInput, StoreFailure {
    RecordCode record = code(code);
    if (!entry.isSure()) {
      RecordCode.requireAnonymous(code);
    }
    Addition opening =
        entry.addition(EntryKind.OPENING, values, Optional.empty(), Offers.NONE, wording());
    if (!entry.isSure()) {
      RecordCode.requireAnonymous(opening.content().words("wearer").orElseThrow());
    }
    store.start(record, opening);
    say("Record.started", code, records().folder());
    return 0;
  }
}
