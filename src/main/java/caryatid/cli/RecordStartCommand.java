package caryatid.cli;

import caryatid.entry.EntryKind;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.EntryDraft;
import caryatid.usecase.Records;
import caryatid.usecase.StartRecord;
import caryatid.usecase.SuggestedRows;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Starts a record. */
@Command(
    name = "start",
    mixinStandardHelpOptions = true,
    description =
        "Starts the record of a prosthesis, such as: start K7-right --by AB wearer=K7 side=right"
            + " level=transtibial")
final class RecordStartCommand extends OneRecordCommand {
  @Parameters(
      index = "1..*",
      paramLabel = "KEY=VALUE",
      description = "What it says: wearer, side, level, body-mass-kg, mobility-grade, note.")
  private List<String> values = new ArrayList<>();

  @Option(
      names = "--shared",
      description =
          "Make a new folder of records for the folder's group as well; for you alone if left out.")
  private boolean shared;

  @Mixin private RecordEntryOptions entry;

  @Override
  int run(Records records) throws BadInput, StoreFailure {
    StartRecord.require(code(), entry.isSure());
    EntryDraft opening =
        entry.draft(
            EntryKind.OPENING, values, Optional.empty(), SuggestedRows.none(wording()), wording());
    StartRecord.run(records, code(), opening, shared);
    say("Record.started", code(), records.folder());
    return 0;
  }
}
