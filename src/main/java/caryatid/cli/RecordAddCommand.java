package caryatid.cli;

import caryatid.entry.Entry;
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

/** Adds an entry to a record. */
@Command(
    name = "add",
    mixinStandardHelpOptions = true,
    description = "Adds an entry to a record; nothing that was added before is changed.")
final class RecordAddCommand extends RecordPart {
  @Parameters(index = "0", paramLabel = "CODE", description = CODE)
  private String code;

  @Parameters(
      index = "1",
      paramLabel = "KIND",
      converter = AddedKind.class,
      description =
          "before-any-screw, bench-alignment, components, length, stand, walking, footwear,"
              + " accepted, own-setting or note; opening, to correct the first entry.")
  private EntryKind kind;

  @Parameters(
      index = "2..*",
      paramLabel = "KEY=VALUE",
      description = "What it says; in rows items[1].set=7. `record form KIND` prints the keys.")
  private List<String> values = new ArrayList<>();

  @Mixin private CorrectionOptions correction;

  @Mixin private RecordEntryOptions entry;

  @Override
  int run(Store store) throws BadInput, StoreFailure {
    RecordCode record = code(code);
    Optional<Entry.Correction> corrects = correction.correction(wording());
    Addition addition = entry.addition(kind, values, corrects, offers(store, record), wording());
    if (kind == EntryKind.OPENING && !entry.isSure()) {
      RecordCode.requireAnonymous(addition.content().words("wearer").orElseThrow());
    }
    Entry added = store.add(record, addition);
    say("Record.added", added.number(), code, wording().word(added.kind()));
    RecordText.warnings(store.read(record), added, wording()).forEach(out()::println);
    return 0;
  }

  /** The usual rows for the level of amputation that the record's first entry says. */
  private Offers offers(Store store, RecordCode record) throws BadInput {
    if (kind != EntryKind.BENCH_ALIGNMENT && kind != EntryKind.WALKING) {
      return Offers.NONE;
    }
    return store.read(record).level().map(l -> Offers.of(kind, l, wording())).orElse(Offers.NONE);
  }
}
