package caryatid.views;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.OwnSetting;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.loadline.Verdict;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the open issues of a record, from its entries alone. */
final class OpenIssueFinder {
  private final List<Entry> valid;
  private final List<Remark> open = new ArrayList<>();

  private OpenIssueFinder(List<Entry> valid) {
    this.valid = valid;
  }

  /**
   * What is open.
   *
   * @param valid the entries that no other takes the place of, in order of time
   * @param offsets how each offset went
   */
  static List<Remark> of(List<Entry> valid, List<OffsetSeries> offsets) {
    OpenIssueFinder items = new OpenIssueFinder(valid);
    items.changed();
    FastenerIssues.of(valid).ifPresent(items.open::add);
    items.open.addAll(HeelSetting.issues(valid));
    items.open.addAll(WearerIssues.of(valid));
    items.open.addAll(SettingIssues.of(valid));
    offsets.forEach(series -> series.current().forEach(now -> items.offset(series, now)));
    offsets.forEach(series -> series.current().forEach(now -> items.validFor(series, now)));
    items.latest(EntryKind.STAND).ifPresent(items::nextStep);
    items.ownSettings();
    LatestShoe.all(valid).forEach(items::shoe);
    LegDifference.of(valid).ifPresent(items.open::add);
    WearerIssues.nextVisit(valid).ifPresent(items.open::add);
    return List.copyOf(items.open);
  }

  private Optional<Entry> latest(EntryKind kind) {
    return Entry.latest(valid, e -> e.kind() == kind);
  }

  private void changed() {
    latest(EntryKind.STAND).flatMap(stand -> changedSince(valid, stand)).ifPresent(open::add);
  }

  /** That something was set otherwise after a stand, by whomever. */
  static Optional<Remark> changedSince(List<Entry> valid, Entry stand) {
    return StandChange.sinceOrByWearer(valid, stand.number())
        .map(
            change ->
                Remark.of(
                    OpenIssue.CHANGED_SINCE,
                    Argument.count(change.number()),
                    Argument.count(stand.number())));
  }

  /** Whoever accepted something of the stand has decided; an acceptance of no stand closes none. */
  private void offset(OffsetSeries series, OffsetSeries.Measured now) {
    if (now.verdict() == Verdict.WITHIN || Acceptances.isAccepted(valid, now.entry())) {
      return;
    }
    List<Argument> arguments =
        new ArrayList<>(
            List.of(
                Argument.term(series.plane()),
                Argument.term(series.side()),
                Argument.text(series.landmark()),
                Argument.text(now.stand()),
                Argument.term(now.verdict()),
                ResultOrigin.behind(now.typed())));
    Optional<Entry> since = StandChange.since(valid, now.entry());
    since.ifPresent(bench -> arguments.add(Argument.count(bench.number())));
    OpenIssue what = since.isPresent() ? OpenIssue.NOT_WITHIN_THEN : OpenIssue.NOT_WITHIN;
    open.add(new Remark(what, arguments));
  }

  /** What reads otherwise is for a person to judge. */
  private void validFor(OffsetSeries series, OffsetSeries.Measured now) {
    Optional<StandSummary> stood =
        valid.stream()
            .filter(e -> e.number() == now.entry())
            .flatMap(e -> e.content(StandSummary.class).stream())
            .findFirst();
    now.validFor()
        .filter(wanted -> stood.filter(s -> TargetValidity.isSaid(wanted, s)).isEmpty())
        .ifPresent(
            wanted -> {
              List<Argument> arguments =
                  new ArrayList<>(
                      List.of(
                          Argument.term(series.plane()),
                          Argument.term(series.side()),
                          Argument.text(series.landmark())));
              arguments.addAll(TargetValidity.parts(wanted));
              arguments.add(Argument.count(now.entry()));
              arguments.addAll(TargetValidity.how(stood));
              open.add(new Remark(OpenIssue.VALID_FOR, arguments));
            });
  }

  private void nextStep(Entry stand) {
    stand
        .content(StandSummary.class)
        .flatMap(StandSummary::nextStep)
        .ifPresent(
            next -> add(OpenIssue.NEXT_STEP, Argument.count(stand.number()), Argument.text(next)));
  }

  /** The latest of each thing that was set: success with one shoe says nothing of another. */
  private void ownSettings() {
    Map<String, Entry> latest = new LinkedHashMap<>();
    for (Entry entry : valid) {
      entry
          .content(OwnSetting.class)
          .ifPresent(own -> latest.put(TermOrText.fold(own.what()), entry));
    }
    latest
        .values()
        .forEach(e -> e.content(OwnSetting.class).ifPresent(o -> ownSetting(e.number(), o)));
  }

  private void ownSetting(int entry, OwnSetting own) {
    if (own.succeeded() < own.attempts()) {
      add(
          OpenIssue.OWN_SETTING,
          Argument.count(entry),
          Argument.count(own.succeeded()),
          Argument.count(own.attempts()),
          Argument.text(own.what()));
    }
  }

  private void shoe(LatestShoe shoe) {
    if (shoe.said().stand().isEmpty() && !isStoodIn(shoe.said().shoe())) {
      add(
          OpenIssue.SHOE_NOT_STOOD_IN,
          Argument.count(shoe.entry()),
          Argument.text(shoe.said().shoe()));
    }
  }

  /** A stand that names the shoe as its footwear is one in it, though the shoe names no stand. */
  private boolean isStoodIn(String shoe) {
    return Entry.contents(valid, StandSummary.class)
        .flatMap(stand -> stand.footwear().stream())
        .anyMatch(worn -> TermOrText.fold(worn).equals(TermOrText.fold(shoe)));
  }

  private void add(OpenIssue what, Argument... arguments) {
    open.add(Remark.of(what, arguments));
  }
}
