package caryatid.cli;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.AddedEntry;
import caryatid.usecase.EntryDraft;
import caryatid.usecase.ExtendRecord;
import caryatid.usecase.Records;
import caryatid.usecase.RememberedParts;
import caryatid.usecase.SuggestedRows;
import caryatid.wording.RecordText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Adds an entry to a record. */
@Command(
    name = "add",
    mixinStandardHelpOptions = true,
    description = "Adds an entry to a record; nothing that was added before is changed.")
final class RecordAddCommand extends OneRecordCommand {
  @Parameters(
      index = "1",
      paramLabel = "KIND",
      converter = Converters.ToEntryKind.class,
      description =
          "before-any-screw, bench-alignment, components, length, stand, walking, footwear,"
              + " accepted, own-setting, closing or note; opening, to correct the first entry.")
  private EntryKind kind;

  @Parameters(
      index = "2..*",
      paramLabel = "KEY=VALUE",
      description = "What it says; in rows items[1].set=7. `record form KIND` prints the keys.")
  private List<String> values = new ArrayList<>();

  @Mixin private CorrectionOptions correction;

  @Mixin private RecordEntryOptions entry;

  @Override
  int run(Records records) throws BadInput, StoreFailure {
    Optional<Entry.Correction> corrects = correction.correction(wording());
    SuggestedRows offers = SuggestedRows.in(records, code(), kind, wording());
    EntryDraft typed = entry.draft(kind, values, corrects, offers, wording());
    EntryDraft draft = typed.saying(RememberedParts.complete(records, code(), kind, typed.given()));
    if (!draft.given().equals(typed.given())) {
      say("cli.partsUsed");
    }
    TerminalQuestions.Added asked =
        new TerminalQuestions(TerminalPrompt.atTerminal(wording(), System.console()), wording())
            .added(draft, each -> ExtendRecord.run(records, code(), each));
    AddedEntry added = asked.entry();
    say("Record.added", added.entry().number(), code(), wording().word(added.entry().kind()));
    print(asked.draft().understood(wording()));
    print(RecordText.remarks(added.remarks(), wording()));
    return 0;
  }
}
