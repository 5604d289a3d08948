package caryatid.views;

import caryatid.entry.Components;
import caryatid.entry.Components.ComponentLimits;
import caryatid.entry.Entry;
import caryatid.entry.RecordOpening;
import caryatid.entry.TermOrText;
import caryatid.geometry.Side;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A component that is fitted now, according to the entries.
 *
 * @param limits what it is, and what its maker states
 * @param entry number of the entry that names it
 */
public record CurrentComponent(ComponentLimits limits, int entry) {
  /** A part of one leg never takes the place of the other leg's. */
  private record LimitedPart(String what, Optional<Side> side) {}

  /**
   * The components, in the order in which their parts were first named. An entry may name only the
   * replaced part; of each part the newest entry that names it counts.
   *
   * @param valid the entries that no other takes the place of, in order of time
   */
  public static List<CurrentComponent> of(List<Entry> valid) {
    Map<LimitedPart, List<CurrentComponent>> parts = new LinkedHashMap<>();
    boolean oneLeg = RecordOpening.isOfOneLeg(valid);
    for (Entry entry : valid) {
      entry.content(Components.class).stream()
          .map(
              named ->
                  named.components().stream()
                      .map(limits -> new CurrentComponent(limits, entry.number()))
                      .collect(
                          Collectors.groupingBy(
                              component -> part(component.limits(), oneLeg),
                              LinkedHashMap::new,
                              Collectors.toList())))
          .forEach(parts::putAll);
    }
    return parts.values().stream().flatMap(List::stream).toList();
  }

  /**
   * Whether the ankle of a leg has an axis, as far as the components that are fitted now say: one
   * that has it counts before others that have none.
   */
  public static Optional<Boolean> statedAnkleAxis(List<Entry> valid, Side leg) {
    return of(valid).stream()
        .map(CurrentComponent::limits)
        .filter(limits -> limits.side().filter(side -> side != leg).isEmpty())
        .flatMap(limits -> limits.ankleAxis().stream())
        .reduce(Boolean::logicalOr);
  }

  private static LimitedPart part(ComponentLimits component, boolean oneLeg) {
    Optional<Side> side = oneLeg ? Optional.empty() : component.side();
    return new LimitedPart(TermOrText.fold(component.what()), side);
  }
}
