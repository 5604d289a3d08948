package caryatid.demo;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.form.Answers;
import caryatid.entry.form.AnswersToContent;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.UnreadableEntry;
import caryatid.remark.Problem;
import caryatid.views.RecordView;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The entries of an invented record, which no store keeps: one an hour, from eight o'clock on. */
public final class Entries {
  private static final OffsetDateTime EIGHT = OffsetDateTime.parse("2026-03-04T08:00:00+01:00");

  private final List<Entry> entries = new ArrayList<>();
  private final List<Problem> damage = new ArrayList<>();
  private final List<UnreadableEntry> unread = new ArrayList<>();

  /** An opening: a right transtibial prosthesis. */
  public static Entries opened() {
    return new Entries()
        .add(
            EntryKind.OPENING,
            DemoRecord.answers("wearer", "DEMO-7", "side", "right", "level", "transtibial"));
  }

  public Entries add(EntryKind kind, Answers answers) {
    return at(EIGHT.plusHours(entries.size()), kind, answers);
  }

  /** One that tells of another time than its turn. */
  public Entries at(OffsetDateTime at, EntryKind kind, Answers answers) {
    return add(at, Optional.empty(), kind, answers, List.of());
  }

  /** One that takes the place of an earlier one, an hour after the newest. */
  public Entries correct(int number, String why, EntryKind kind, Answers answers) {
    return add(
        entries.get(entries.size() - 1).at().plusHours(1),
        Optional.of(new Entry.Correction(number, why, Optional.empty())),
        kind,
        answers,
        List.of());
  }

  /** One that keeps files. */
  public Entries keep(EntryKind kind, Answers answers, KeptFile... files) {
    return add(EIGHT.plusHours(entries.size()), Optional.empty(), kind, answers, List.of(files));
  }

  private Entries add(
      OffsetDateTime at,
      Optional<Entry.Correction> corrects,
      EntryKind kind,
      Answers answers,
      List<KeptFile> files) {
    entries.add(
        new Entry(
            entries.size() + 1,
            at,
            "AB",
            corrects,
            AnswersToContent.content(kind, Filled.of(kind, answers)),
            files));
    return this;
  }

  /** That something is damaged. */
  public Entries damaged(Problem problem) {
    damage.add(problem);
    return this;
  }

  /** That an entry of a newer version cannot be read. */
  public Entries unread(Problem problem) {
    unread.add(new UnreadableEntry(entries.size() + 1, true, List.of(problem)));
    return this;
  }

  public List<Entry> all() {
    return List.copyOf(entries);
  }

  public FittingRecord record() {
    int size = entries.size();
    return new FittingRecord(
        Invented.CODE, "0".repeat(128), size, size, Map.of(), entries, damage, unread);
  }

  public RecordView view() {
    return RecordView.of(record());
  }
}
