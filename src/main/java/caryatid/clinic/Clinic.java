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
 * @param torques of components' fasteners, one for each
 * @param limits a file of the clinic's limits, if there are any
 * @param answers what was answered in sessions, each once
 * @param doubts what the clinic measured of its own hands, one of a kind for each
 */
public record Clinic(
    List<KnownPlate> plates,
    List<ComponentLimits> parts,
    List<PartTorque> torques,
    Optional<String> limits,
    List<SessionAnswer> answers,
    List<MeasuredDoubt> doubts) {
  /** A clinic that remembers nothing. */
  public static final Clinic NEW =
      new Clinic(List.of(), List.of(), List.of(), Optional.empty(), List.of(), List.of());

  /** Answers of so many days are remembered, the latest ones. */
  private static final int DAYS = 3;

  public Clinic {
    plates = List.copyOf(plates);
    parts = List.copyOf(parts);
    torques = List.copyOf(torques);
    answers = List.copyOf(answers);
    doubts = List.copyOf(doubts);
  }

  /** The description for exports with these columns: the same names in the same order. */
  public Optional<KnownPlate> plate(List<String> columns) {
    return plates.stream().filter(plate -> plate.columns().equals(columns)).findFirst();
  }

  /** The same clinic with a description, which takes the place of the one for these columns. */
  public Clinic with(KnownPlate plate) {
    Stream<KnownPlate> others =
        plates.stream().filter(other -> !other.columns().equals(plate.columns()));
    return new Clinic(
        Stream.concat(others, Stream.of(plate)).toList(), parts, torques, limits, answers, doubts);
  }

  /** The same clinic without the description for these columns. */
  public Clinic withoutPlate(List<String> columns) {
    return new Clinic(
        plates.stream().filter(plate -> !plate.columns().equals(columns)).toList(),
        parts,
        torques,
        limits,
        answers,
        doubts);
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
    return new Clinic(
        plates, Stream.concat(others, Stream.of(part)).toList(), torques, limits, answers, doubts);
  }

  /** The torques of a component's fasteners. */
  public List<PartTorque> torques(String what, String name) {
    return torques.stream()
        .filter(torque -> isSame(torque.what(), what) && isSame(torque.name(), name))
        .toList();
  }

  /** The same clinic with a torque, which takes the place of the one of that fastener. */
  public Clinic with(PartTorque torque) {
    Stream<PartTorque> others =
        torques.stream()
            .filter(
                o ->
                    !isSame(o.what(), torque.what())
                        || !isSame(o.name(), torque.name())
                        || !isSame(o.fastener(), torque.fastener()));
    return new Clinic(
        plates, parts, Stream.concat(others, Stream.of(torque)).toList(), limits, answers, doubts);
  }

  /** The same clinic with limits, which take the place of those before. */
  public Clinic limited(String yaml) {
    return new Clinic(plates, parts, torques, Optional.of(yaml), answers, doubts);
  }

  /** The same clinic with a doubt, which takes the place of the one of that kind and hand. */
  public Clinic with(MeasuredDoubt doubt) {
    Stream<MeasuredDoubt> others =
        doubts.stream().filter(o -> o.kind() != doubt.kind() || !isSame(o.by(), doubt.by()));
    return new Clinic(
        plates, parts, torques, limits, answers, Stream.concat(others, Stream.of(doubt)).toList());
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
        plates,
        parts,
        torques,
        limits,
        all.stream().filter(given -> latest.contains(given.day())).toList(),
        doubts);
  }

  private static boolean isSame(String one, String other) {
    return TermOrText.fold(one).equals(TermOrText.fold(other));
  }
}
