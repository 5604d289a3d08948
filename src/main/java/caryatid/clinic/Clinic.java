package caryatid.clinic;

import caryatid.entry.Components.ComponentLimits;
import caryatid.entry.TermOrText;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a clinic remembers.
 *
 * @param plates plate descriptions, one for the same columns
 * @param parts components with their makers' limits, without serial number and side; one of a name
 * @param answers what was answered in sessions, each once
 */
public record Clinic(
    List<KnownPlate> plates, List<ComponentLimits> parts, List<SessionAnswer> answers) {
  /** A clinic that remembers nothing. */
  public static final Clinic NEW = new Clinic(List.of(), List.of(), List.of());

  /** Answers of so many days are remembered, the latest ones. */
  private static final int DAYS = 3;

  public Clinic {
    plates = List.copyOf(plates);
    parts = List.copyOf(parts);
    answers = List.copyOf(answers);
  }

  /** The description for exports with these columns: the same names in the same order. */
  public Optional<KnownPlate> plate(List<String> columns) {
    return plates.stream().filter(plate -> plate.columns().equals(columns)).findFirst();
  }

  /** The same clinic with a description, which takes the place of the one for these columns. */
  public Clinic with(KnownPlate plate) {
    Stream<KnownPlate> others =
        plates.stream().filter(other -> !other.columns().equals(plate.columns()));
    return new Clinic(Stream.concat(others, Stream.of(plate)).toList(), parts, answers);
  }

  /** The component that goes by a name, whatever its capital letters and blanks. */
  public Optional<ComponentLimits> part(String what, String name) {
    return parts.stream()
        .filter(part -> isSame(part.what(), what) && isSame(part.name(), name))
        .findFirst();
  }

  /** The same clinic with a component, which takes the place of the one of that name. */
  public Clinic with(ComponentLimits part) {
    Stream<ComponentLimits> others =
        parts.stream()
            .filter(o -> !isSame(o.what(), part.what()) || !isSame(o.name(), part.name()));
    return new Clinic(plates, Stream.concat(others, Stream.of(part)).toList(), answers);
  }

  /** What was answered in a session. */
  public Set<String> answers(String session) {
    return answers.stream()
        .filter(given -> given.session().equals(session))
        .map(SessionAnswer::answer)
        .collect(Collectors.toSet());
  }

  /** The same clinic with answers; those of earlier days than the latest few are forgotten. */
  public Clinic with(List<SessionAnswer> more) {
    List<SessionAnswer> all = Stream.concat(answers.stream(), more.stream()).distinct().toList();
    Set<LocalDate> latest =
        all.stream()
            .map(SessionAnswer::day)
            .distinct()
            .sorted(Comparator.reverseOrder())
            .limit(DAYS)
            .collect(Collectors.toSet());
    return new Clinic(
        plates, parts, all.stream().filter(given -> latest.contains(given.day())).toList());
  }

  private static boolean isSame(String one, String other) {
    return TermOrText.fold(one).equals(TermOrText.fold(other));
  }
}
