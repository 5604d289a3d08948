package caryatid.views;

import caryatid.entry.Assessment;
import caryatid.entry.Closing;
import caryatid.entry.Entry;
import caryatid.entry.EntryContent;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.entry.Walking;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Finds open issues of the wearer's walking, skin and comfort, and the next visit. */
final class WearerIssues {
  /** Words for skin of which nothing is open, folded; whatever else is said is for a person. */
  private static final Pattern NO_MARKS =
      Pattern.compile(
          "(?:none|no"
              + " (?:marks?|redness|findings)|nothing|clear|intact|unremarkable|normal|ok|fine|good|keine?(?:"
              + " druckstellen?| rötung(?:en)?| befunde?)?|nichts|ohne befund|o\\."
              + " ?b|unauffällig|reizlos|intakt|in ordnung|gut|rien|aucune?(?: marque|"
              + " rougeur)?|pas de (?:marques?|rougeur)|intacte?|normale?|sans"
              + " particularité|bien|ninguna?|nada|sin"
              + " (?:marcas|enrojecimiento|hallazgos|lesiones)|íntegra|intacta|bien)\\.?");

  private final List<Entry> valid;
  private final List<Remark> open = new ArrayList<>();

  private WearerIssues(List<Entry> valid) {
    this.valid = valid;
  }

  /**
   * What is open.
   *
   * @param valid the entries that no other takes the place of, in order of time
   */
  static List<Remark> of(List<Entry> valid) {
    WearerIssues issues = new WearerIssues(valid);
    issues.deviations();
    issues.skin();
    issues.fell(OpenIssue.COMFORT_FELL, WearerIssues::comfort);
    issues.fell(OpenIssue.SOCKET_COMFORT_FELL, WearerIssues::socketComfort);
    issues.nextVisit();
    return List.copyOf(issues.open);
  }

  /**
   * What was seen when the wearer last walked; a later walking that does not name it settles it.
   */
  private void deviations() {
    Optional<Entry> last =
        valid.stream()
            .filter(e -> e.content() instanceof Walking)
            .reduce((earlier, later) -> later)
            .filter(e -> !Acceptances.isAccepted(valid, e.number()));
    last.ifPresent(
        entry ->
            entry.content(Walking.class).stream()
                .flatMap(walking -> walking.observations().stream())
                .forEach(seen -> deviation(entry, seen)));
  }

  private void deviation(Entry entry, Walking.Observation seen) {
    List<Argument> arguments = new ArrayList<>(List.of(Argument.count(entry.number())));
    arguments.addAll(TargetValidity.parts(seen.deviation()));
    open.add(new Remark(OpenIssue.DEVIATION, arguments));
  }

  private void skin() {
    valid.stream()
        .filter(e -> skin(e.content()).isPresent())
        .reduce((earlier, later) -> later)
        .filter(e -> !Acceptances.isAccepted(valid, e.number()))
        .ifPresent(
            e ->
                skin(e.content())
                    .filter(said -> !NO_MARKS.matcher(TermOrText.fold(said)).matches())
                    .ifPresent(
                        said ->
                            add(OpenIssue.SKIN, Argument.count(e.number()), Argument.text(said))));
  }

  private static Optional<String> skin(EntryContent content) {
    if (content instanceof Assessment assessment) {
      return assessment.skin();
    }
    if (content instanceof StandSummary stood) {
      return stood.skin();
    }
    if (content instanceof Walking walking) {
      return walking.skin();
    }
    return content instanceof Closing closing ? closing.skin() : Optional.empty();
  }

  /** The last score below the one before it. */
  private void fell(OpenIssue what, Function<EntryContent, OptionalInt> score) {
    List<Entry> scored = valid.stream().filter(e -> score.apply(e.content()).isPresent()).toList();
    if (scored.size() < 2) {
      return;
    }
    Entry before = scored.get(scored.size() - 2);
    Entry last = scored.get(scored.size() - 1);
    int was = score.apply(before.content()).getAsInt();
    int is = score.apply(last.content()).getAsInt();
    if (is < was && !Acceptances.isAccepted(valid, last.number())) {
      add(
          what,
          Argument.count(was),
          Argument.count(before.number()),
          Argument.count(is),
          Argument.count(last.number()));
    }
  }

  private static OptionalInt comfort(EntryContent content) {
    return content instanceof Walking walking ? walking.comfort() : OptionalInt.empty();
  }

  private static OptionalInt socketComfort(EntryContent content) {
    if (content instanceof Assessment assessment) {
      return assessment.socketComfort();
    }
    if (content instanceof Walking walking) {
      return walking.socketComfort();
    }
    return content instanceof Closing closing ? closing.socketComfort() : OptionalInt.empty();
  }

  /** Open until something is added of that day or a later one. */
  private void nextVisit() {
    valid.stream()
        .filter(e -> day(e).isPresent())
        .reduce((earlier, later) -> later)
        .filter(e -> valid.stream().noneMatch(other -> isFrom(day(e).get(), other)))
        .ifPresent(
            e ->
                add(
                    OpenIssue.NEXT_VISIT,
                    Argument.text(day(e).get().toString()),
                    Argument.count(e.number())));
  }

  private static Optional<LocalDate> day(Entry entry) {
    return entry.content(Closing.class).flatMap(Closing::nextVisit);
  }

  private static boolean isFrom(LocalDate day, Entry entry) {
    return !entry.at().toLocalDate().isBefore(day);
  }

  private void add(OpenIssue what, Argument... arguments) {
    open.add(Remark.of(what, arguments));
  }
}
