package caryatid.fitting;

import caryatid.entry.BenchItem;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.loadline.Verdict;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds what a record leaves open, from its entries alone. */
final class OpenItems {
  private final List<Entry> valid;
  private final List<Remark> open = new ArrayList<>();

  private OpenItems(List<Entry> valid) {
    this.valid = valid;
  }

  /**
   * What is open.
   *
   * @param valid the entries that no other takes the place of, in order of time
   * @param offsets how each offset went
   */
  static List<Remark> of(List<Entry> valid, List<OffsetSeries> offsets) {
    OpenItems items = new OpenItems(valid);
    items.bench();
    offsets.forEach(series -> series.current().forEach(now -> items.offset(series, now)));
    offsets.forEach(series -> series.current().forEach(now -> items.validFor(series, now)));
    items.latest(EntryKind.STAND).ifPresent(items::nextStep);
    items.ownSettings();
    Shoe.all(valid).forEach(items::shoe);
    return List.copyOf(items.open);
  }

  private Optional<Entry> latest(EntryKind kind) {
    return valid.stream().filter(e -> e.kind() == kind).reduce((earlier, later) -> later);
  }

  private void bench() {
    Optional<Entry> bench = latest(EntryKind.BENCH_ALIGNMENT);
    Optional<Entry> stand = latest(EntryKind.STAND);
    if (bench.isPresent()
        && stand.isPresent()
        && valid.indexOf(bench.get()) > valid.indexOf(stand.get())) {
      add(
          Open.CHANGED_SINCE,
          Argument.count(bench.get().number()),
          Argument.count(stand.get().number()));
    }
    bench
        .filter(b -> !BenchItem.saysTorque(b.content()))
        .ifPresent(b -> add(Open.NO_FASTENERS, Argument.count(b.number())));
  }

  /** Whoever accepted something of the stand has decided; an acceptance of no stand closes none. */
  private void offset(OffsetSeries series, OffsetSeries.Measured now) {
    boolean accepted =
        valid.stream()
            .filter(e -> e.kind() == EntryKind.ACCEPTED && e.number() > now.entry())
            .anyMatch(
                e ->
                    e.content()
                        .number("stand")
                        .filter(s -> s.intValue() == now.entry())
                        .isPresent());
    if (now.verdict() == Verdict.WITHIN || accepted) {
      return;
    }
    List<Argument> arguments =
        new ArrayList<>(
            List.of(
                Argument.term(series.plane()),
                Argument.term(series.side()),
                Argument.text(series.landmark()),
                Argument.text(now.stand()),
                Argument.term(now.verdict())));
    Optional<Entry> since = StandChange.since(valid, now.entry());
    since.ifPresent(bench -> arguments.add(Argument.count(bench.number())));
    Open what = since.isPresent() ? Open.NOT_WITHIN_THEN : Open.NOT_WITHIN;
    open.add(new Remark(what, arguments));
  }

  /** Words are compared as words: what reads otherwise is for a person to judge. */
  private void validFor(OffsetSeries series, OffsetSeries.Measured now) {
    Answers stood =
        valid.stream()
            .filter(e -> e.number() == now.entry())
            .map(Entry::content)
            .findFirst()
            .orElse(Answers.NONE);
    List<String> how =
        Stream.of("footwear", "knee-mode").flatMap(key -> stood.words(key).stream()).toList();
    now.validFor()
        .filter(wanted -> how.stream().noneMatch(h -> isSaid(wanted.strip(), h)))
        .ifPresent(
            wanted ->
                add(
                    Open.VALID_FOR,
                    Argument.term(series.plane()),
                    Argument.term(series.side()),
                    Argument.text(series.landmark()),
                    Argument.text(wanted),
                    Argument.count(now.entry()),
                    Argument.text(String.join(", ", how))));
  }

  /** A knee's lock and its mode stand in one, and either may be what a target is valid for. */
  private static boolean isSaid(String wanted, String how) {
    return Stream.concat(Stream.of(how), Stream.of(how.split(", ", 2)))
        .anyMatch(wanted::equalsIgnoreCase);
  }

  private void nextStep(Entry stand) {
    stand
        .content()
        .words("next-step")
        .ifPresent(
            next -> add(Open.NEXT_STEP, Argument.count(stand.number()), Argument.text(next)));
  }

  /** The latest of each thing that was set: success with one shoe says nothing of another. */
  private void ownSettings() {
    Map<String, Entry> latest = new LinkedHashMap<>();
    valid.stream()
        .filter(e -> e.kind() == EntryKind.OWN_SETTING)
        .forEach(
            e -> {
              String what = e.content().words("what").orElseThrow();
              latest.put(what.strip().toLowerCase(Locale.ROOT), e);
            });
    latest.values().forEach(this::ownSetting);
  }

  private void ownSetting(Entry entry) {
    long attempts = entry.content().number("attempts").orElseThrow().longValue();
    long succeeded = entry.content().number("succeeded").orElseThrow().longValue();
    if (succeeded < attempts) {
      add(
          Open.OWN_SETTING,
          Argument.count(entry.number()),
          Argument.count(succeeded),
          Argument.count(attempts),
          Argument.text(entry.content().words("what").orElseThrow()));
    }
  }

  private void shoe(Shoe shoe) {
    if (shoe.said().number("stand").isEmpty()) {
      add(
          Open.SHOE_NOT_STOOD_IN,
          Argument.count(shoe.entry()),
          Argument.text(shoe.said().words("shoe").orElseThrow()));
    }
  }

  private void add(Open what, Argument... arguments) {
    open.add(Remark.of(what, arguments));
  }
}
