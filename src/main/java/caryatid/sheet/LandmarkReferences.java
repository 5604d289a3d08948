package caryatid.sheet;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.yaml.NameSuggester;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** Landmarks measured from other landmarks. */
final class LandmarkReferences {
  /** Each link adds its doubts to all that follow; more are no way to measure a leg. */
  private static final int LONGEST_CHAIN = 10;

  private final List<LandmarkEntry> entries;

  LandmarkReferences(List<LandmarkEntry> entries) {
    this.entries = entries;
  }

  /** The landmark from which another was measured in a plane, if it was and that one exists. */
  Optional<LandmarkEntry> reference(LandmarkEntry entry, Plane plane) {
    return name(entry, plane).flatMap(name -> find(name, entry.side()));
  }

  Optional<LandmarkEntry> find(String name, Side side) {
    return entries.stream().filter(e -> e.is(name, side)).findFirst();
  }

  List<String> names(Side side) {
    return entries.stream().filter(e -> e.side() == side).map(LandmarkEntry::name).toList();
  }

  /** What is wrong with them: references that are not there, and circles. */
  List<Problem> problems(Function<LandmarkEntry, Place> places) {
    return entries.stream()
        .flatMap(e -> Stream.of(Plane.values()).flatMap(p -> problem(e, p, places.apply(e))))
        .distinct()
        .toList();
  }

  private Stream<Problem> problem(LandmarkEntry entry, Plane plane, Place place) {
    Optional<String> name = name(entry, plane);
    if (name.isEmpty()) {
      return Stream.empty();
    }
    Optional<LandmarkEntry> reference = reference(entry, plane);
    Argument own = Argument.text(entry.name());
    Argument other = Argument.text(name.get());
    if (reference.isEmpty()) {
      return Stream.of(unknown(entry, name.get(), place));
    }
    if (reference.get().in(plane).isEmpty()) {
      return Stream.of(
          Problem.at(
              place, LandmarkProblem.LANDMARK_NOT_IN_PLANE, own, other, Argument.term(plane)));
    }
    if (circles(entry, plane)) {
      return Stream.of(Problem.at(place, LandmarkProblem.CIRCLE, own, other));
    }
    return chained(entry, plane) > LONGEST_CHAIN
        ? Stream.of(
            Problem.at(place, LandmarkProblem.CHAIN, own, other, Argument.count(LONGEST_CHAIN)))
        : Stream.empty();
  }

  /** How many landmarks one is measured from, one after the other; none in a circle. */
  private int chained(LandmarkEntry start, Plane plane) {
    Set<LandmarkEntry> seen = new HashSet<>();
    Optional<LandmarkEntry> at = reference(start, plane);
    while (at.isPresent() && seen.add(at.get())) {
      at = reference(at.get(), plane);
    }
    return at.isPresent() ? 0 : seen.size();
  }

  private Problem unknown(LandmarkEntry entry, String name, Place place) {
    Argument own = Argument.text(entry.name());
    Argument other = Argument.text(name);
    return NameSuggester.by(name, names(entry.side()))
        .map(
            m ->
                Problem.at(
                    place, LandmarkProblem.LANDMARK_UNKNOWN_MEANT, own, other, Argument.text(m)))
        .orElseGet(() -> Problem.at(place, LandmarkProblem.LANDMARK_UNKNOWN, own, other));
  }

  private boolean circles(LandmarkEntry start, Plane plane) {
    Set<LandmarkEntry> seen = new HashSet<>();
    Optional<LandmarkEntry> at = Optional.of(start);
    while (at.isPresent() && seen.add(at.get())) {
      at = reference(at.get(), plane);
    }
    return at.filter(start::equals).isPresent();
  }

  private static Optional<String> name(LandmarkEntry entry, Plane plane) {
    return entry.in(plane).filter(m -> m.fromLandmark()).flatMap(m -> m.from());
  }
}
