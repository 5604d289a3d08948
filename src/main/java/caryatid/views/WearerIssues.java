package caryatid.views;

import caryatid.entry.Assessment;
import caryatid.entry.Closing;
import caryatid.entry.Entry;
import caryatid.entry.EntryContent;
import caryatid.entry.Severity;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.entry.Walking;
import caryatid.entry.WalkingDeviation;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.regex.Pattern;

/** Finds open issues of the wearer's pain, words, skin, comfort and walking, and the next visit. */
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

  /** Words that say that no deviation was seen, folded. */
  private static final Pattern NOTHING_SEEN =
      Pattern.compile(
          "(?:none|nothing(?: seen)?|no deviations?(?: seen)?|keine?(?:"
              + " abweichung(?:en)?)?|nichts(?: gesehen)?|rien(?: vu)?|aucune?(?: déviation|"
              + " défaut)?|nada(?: visto)?|ninguna?(?: desviación)?)\\.?");

  /** From here on pain is severe (common practice, no source). */
  private static final int SEVERE = 7;

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
    issues.pain();
    issues.words();
    issues.skin();
    issues.worse(OpenIssue.COMFORT_FELL, WearerIssues::comfort, 1);
    issues.worse(OpenIssue.SOCKET_COMFORT_FELL, WearerIssues::socketComfort, 1);
    issues.deviations();
    return List.copyOf(issues.open);
  }

  /** An observation, and the entry that holds it. */
  private record Seen(Entry entry, Walking.Observation what) {}

  /**
   * What was seen in any walking, as it was seen last. Only somebody who looked and saw that it is
   * gone settles it, or saw nothing at all; that a later walking does not name it does not.
   */
  private void deviations() {
    Map<TermOrText.NameKey, Seen> seen = new LinkedHashMap<>();
    for (Entry entry : valid) {
      entry.content(Walking.class).stream()
          .flatMap(walking -> walking.observations().stream())
          .forEach(observation -> see(seen, new Seen(entry, observation)));
    }
    seen.values().stream()
        .filter(s -> !Acceptances.isAccepted(valid, s.entry().number()))
        .forEach(s -> deviation(s.entry(), s.what()));
  }

  private static void see(Map<TermOrText.NameKey, Seen> all, Seen seen) {
    TermOrText<WalkingDeviation> deviation = seen.what().deviation();
    if (NOTHING_SEEN.matcher(TermOrText.fold(deviation.text())).matches()) {
      all.clear();
      return;
    }
    all.remove(deviation.key());
    if (seen.what().severity().filter(Severity.NONE::equals).isEmpty()) {
      all.put(deviation.key(), seen);
    }
  }

  private void deviation(Entry entry, Walking.Observation seen) {
    List<Argument> arguments = new ArrayList<>(List.of(Argument.count(entry.number())));
    arguments.addAll(TargetValidity.parts(seen.deviation()));
    open.add(new Remark(OpenIssue.DEVIATION, arguments));
  }

  private void skin() {
    Entry.latest(valid, e -> skin(e.content()).isPresent())
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

  /** Severe pain leads, also where it is the first that was noted. */
  private void pain() {
    pain(valid, OpenIssue.PAIN_SEVERE, SEVERE).ifPresent(open::add);
    worse(OpenIssue.PAIN_ROSE, WearerIssues::pain, -1);
  }

  /** What the wearer said last is for a person to judge. */
  private void words() {
    Entry.latest(valid, e -> words(e.content()).isPresent())
        .filter(e -> !Acceptances.isAccepted(valid, e.number()))
        .ifPresent(
            e ->
                add(
                    OpenIssue.WEARER_SAYS,
                    Argument.count(e.number()),
                    Argument.text(words(e.content()).orElseThrow())));
  }

  private static Optional<String> words(EntryContent content) {
    if (content instanceof Assessment assessment) {
      return assessment.wearerSays();
    }
    if (content instanceof Walking walking) {
      return walking.wearerSays();
    }
    return content instanceof Closing closing ? closing.wearerSays() : Optional.empty();
  }

  /**
   * The last score worse than the best one before it, so that repeating a bad score settles
   * nothing. One that was accepted is where counting starts again.
   *
   * @param good 1 where a high score is good, -1 where a low one is
   */
  private void worse(OpenIssue what, Function<EntryContent, OptionalInt> score, int good) {
    List<Entry> scored = new ArrayList<>();
    for (Entry entry : valid) {
      if (score.apply(entry.content()).isPresent()) {
        if (Acceptances.isAccepted(valid, entry.number())) {
          scored.clear();
        }
        scored.add(entry);
      }
    }
    if (scored.size() < 2) {
      return;
    }
    ToIntFunction<Entry> value = e -> good * score.apply(e.content()).getAsInt();
    Entry last = scored.get(scored.size() - 1);
    Entry best =
        scored.subList(0, scored.size() - 1).stream()
            .reduce((a, b) -> value.applyAsInt(b) >= value.applyAsInt(a) ? b : a)
            .orElseThrow();
    if (value.applyAsInt(last) < value.applyAsInt(best)) {
      add(
          what,
          Argument.count((long) good * value.applyAsInt(best)),
          Argument.count(best.number()),
          Argument.count((long) good * value.applyAsInt(last)),
          Argument.count(last.number()));
    }
  }

  /**
   * Pain as it was scored last, where it reaches a score and nobody accepted it as it is.
   * Arguments: the score, the number of its entry.
   */
  static Optional<Remark> pain(List<Entry> valid, Topic topic, int least) {
    return Entry.latest(valid, e -> pain(e.content()).isPresent())
        .filter(e -> pain(e.content()).getAsInt() >= least)
        .filter(e -> !Acceptances.isAccepted(valid, e.number()))
        .map(
            e ->
                Remark.of(
                    topic,
                    Argument.count(pain(e.content()).getAsInt()),
                    Argument.count(e.number())));
  }

  private static OptionalInt pain(EntryContent content) {
    if (content instanceof Assessment assessment) {
      return assessment.pain();
    }
    if (content instanceof Walking walking) {
      return walking.pain();
    }
    return content instanceof Closing closing ? closing.pain() : OptionalInt.empty();
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

  /**
   * The next visit: open until the wearer was there on that day or later, as an entry after it was
   * agreed on says, or another day is agreed on.
   */
  static Optional<Remark> nextVisit(List<Entry> valid) {
    return Entry.latest(valid, e -> day(e).isPresent())
        .filter(
            e ->
                valid.stream()
                    .dropWhile(other -> !other.equals(e))
                    .skip(1)
                    .filter(other -> other.kind().isOfAVisit())
                    .noneMatch(other -> isFrom(day(e).orElseThrow(), other)))
        .map(
            e ->
                Remark.of(
                    OpenIssue.NEXT_VISIT,
                    Argument.text(day(e).orElseThrow().toString()),
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
