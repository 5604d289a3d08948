package caryatid.clinic;

import caryatid.entry.Components.ComponentLimits;
import caryatid.entry.TermOrText;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a clinic remembers.
 *
 * @param plates plate descriptions, one for the same columns
 * @param parts components with their makers' limits, without serial number and side; one of a name
 */
public record Clinic(List<KnownPlate> plates, List<ComponentLimits> parts) {
  /** A clinic that remembers nothing. */
  public static final Clinic NEW = new Clinic(List.of(), List.of());

  public Clinic {
    plates = List.copyOf(plates);
    parts = List.copyOf(parts);
  }

  /** The description for exports with these columns: the same names in the same order. */
  public Optional<KnownPlate> plate(List<String> columns) {
    return plates.stream().filter(plate -> plate.columns().equals(columns)).findFirst();
  }

  /** The same clinic with a description, which takes the place of the one for these columns. */
  public Clinic with(KnownPlate plate) {
    Stream<KnownPlate> others =
        plates.stream().filter(other -> !other.columns().equals(plate.columns()));
    return new Clinic(Stream.concat(others, Stream.of(plate)).toList(), parts);
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
    return new Clinic(plates, Stream.concat(others, Stream.of(part)).toList());
  }

  private static boolean isSame(String one, String other) {
    return TermOrText.fold(one).equals(TermOrText.fold(other));
  }
}
