package caryatid.web;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.StandSummary;
import caryatid.remark.Argument;
import caryatid.usecase.stand.StandFields;
import caryatid.web.page.LocalTimes;
import caryatid.web.page.Markup;
import caryatid.wording.EntryWords;
import caryatid.wording.Wording;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;

/** The state of alignment that was kept last, as it is told where the next one is measured. */
final class LastState {
  private final OpenRecord record;
  private final Entry stand;
  private final Wording wording;

  LastState(OpenRecord record, Entry stand) {
    this.record = record;
    this.stand = stand;
    this.wording = record.wording();
  }

  /** The newest change since then; empty where nothing was set otherwise. */
  private Optional<Integer> change() {
    return record.view().isChangedSinceStand() ? newestChange(record) : Optional.empty();
  }

  /** The newest entry about what is set. */
  private static Optional<Integer> newestChange(OpenRecord record) {
    return record.view().valid().stream()
        .filter(entry -> entry.kind() == EntryKind.BENCH_ALIGNMENT)
        .map(Entry::number)
        .reduce((earlier, later) -> later);
  }

  /**
   * The change after which what was counted before does not show what is set now; empty where
   * nothing was set otherwise since.
   *
   * @param fields what was typed for the drafted state, with its time
   */
  static Optional<Integer> changeSince(OpenRecord record, Map<String, String> fields) {
    Optional<OffsetDateTime> stood =
        Optional.ofNullable(fields.get(StandFields.AT))
            .flatMap(LocalTimes.here(record.wording())::read);
    Optional<Integer> change = newestChange(record);
    return change.filter(
        number ->
            stood.isPresent()
                && record.view().valid().stream()
                    .anyMatch(e -> e.number() == number && e.at().isAfter(stood.get())));
  }

  void show(Markup content) {
    content.open("details", "class", "fold last-state");
    content.open("summary").text(wording.fill("Web.lastState", Argument.count(stand.number())));
    change()
        .ifPresent(
            number ->
                content
                    .text(" ")
                    .element(
                        "strong",
                        wording.fill("Web.change.before", Argument.count(number)),
                        "class",
                        "before-change"));
    content.close("summary");
    stand
        .content(StandSummary.class)
        .ifPresent(
            summary ->
                new EntryWords(wording).lines(summary).forEach(line -> content.element("p", line)));
    content
        .open("p")
        .element(
            "a",
            wording.fill("Web.lastReport", Argument.count(stand.number())),
            "href",
            record.base() + "/report/" + stand.number())
        .close("p")
        .close("details");
  }
}
