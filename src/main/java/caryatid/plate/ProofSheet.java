package caryatid.plate;

import caryatid.geometry.Side;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What was done to prove a plate, as it was written down.
 *
 * @param at when
 * @param by initials of who did it
 * @param doubts what is uncertain about it
 * @param weights which weight stood where, and in which recording
 * @param person what a person did, and in which recordings
 */
public record ProofSheet(
    OffsetDateTime at, String by, ProofDoubts doubts, List<PlacedWeight> weights, Person person) {
  public ProofSheet {
    weights = List.copyOf(weights);
  }

  /**
   * A weight on a marked place.
   *
   * @param recording name of the recording
   * @param rightMm the place, to the right of the zero, mm
   * @param anteriorMm the place, anterior to the zero, mm
   * @param kg the mass, kg
   */
  public record PlacedWeight(String recording, double rightMm, double anteriorMm, double kg) {}

  /**
   * A person who faces as wearers do.
   *
   * @param standing the recording of standing
   * @param forward the recording of leaning forward
   * @param oneFoot the recording of standing on one foot
   * @param foot which foot
   * @param kg the person's mass, kg, where it is known
   */
  public record Person(
      String standing, String forward, String oneFoot, Side foot, OptionalDouble kg) {}

  /** The names of all recordings, in the order they are written down. */
  public List<String> recordings() {
    List<String> names = new ArrayList<>();
    weights.forEach(weight -> names.add(weight.recording()));
    names.addAll(List.of(person.standing(), person.forward(), person.oneFoot()));
    return names;
  }

  /** The mean mass of the weights, kg; there is at least one. */
  public double meanKg() {
    return weights.stream().mapToDouble(PlacedWeight::kg).average().orElseThrow();
  }

  /** The mass for which the plate will be used, kg. */
  public double bodyKg() {
    return doubts.bodyKg();
  }
}
