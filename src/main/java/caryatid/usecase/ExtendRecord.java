package caryatid.usecase;

import caryatid.entry.Entry;
import caryatid.entry.RecordOpening;
import caryatid.fitting.Addition;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Question;
import caryatid.remark.StoreFailure;
import caryatid.sheet.yaml.NameSuggester;
import caryatid.views.FastenerNames;
import caryatid.views.HeelQuestions;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Adds an entry to a record, or one that takes an earlier one's place. */
public final class ExtendRecord {
  private ExtendRecord() {}

  /**
   * Adds an entry.
   *
   * @param draft the entry
   * @throws BadInput if there is no such record, it takes no entries, or the entry does not fit
   * @throws StoreFailure if another program is writing, or it cannot be written
   */
  public static AddedEntry run(Records records, String code, EntryDraft draft)
      throws BadInput, StoreFailure {
    RecordCode record = RecordCode.of(code);
    Addition addition = draft.addition(records.now(), RememberedLimits.of(records));
    if (addition.content() instanceof RecordOpening opening && !draft.sure()) {
      RecordCode.requireAnonymous(opening.wearer());
    }
    ask(records.store().read(record), draft, addition);
    Entry added = records.store().add(record, addition);
    return AddedEntry.to(records.store().read(record), added);
  }

  /** Asks about what does not go with the other entries. */
  private static void ask(FittingRecord record, EntryDraft draft, Addition addition)
      throws BadInput {
    OptionalInt corrected =
        draft.corrects().map(c -> OptionalInt.of(c.number())).orElse(OptionalInt.empty());
    List<Entry> valid =
        record.valid().stream()
            .filter(e -> corrected.isEmpty() || e.number() != corrected.getAsInt())
            .toList();
    List<Question> open = new ArrayList<>(HeelQuestions.ofShoes(valid, addition.content()));
    open.addAll(FastenerNames.questions(valid, addition.content(), ExtendRecord::isSlip));
    if (!open.isEmpty()) {
      throw BadInput.asked(Place.of(draft.kind().key()), open);
    }
  }

  private static boolean isSlip(String one, String other) {
    return NameSuggester.slip(one, List.of(other)).isPresent();
  }
}
