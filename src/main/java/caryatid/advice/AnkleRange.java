package caryatid.advice;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The heel heights that a foot or ankle can be set for, by its maker's limits, and the shoes that
 * lie beyond.
 *
 * @param name what the part is called
 * @param lowestMm the lowest effective heel height, mm; empty where none is stated
 * @param highestMm the highest one
 * @param shoes the shoes whose heel lies beyond
 */
public record AnkleRange(
    String name, OptionalDouble lowestMm, OptionalDouble highestMm, List<ShoeHeel> shoes) {

  /**
   * A shoe and its heel.
   *
   * @param name which
   * @param heelMm its effective heel height, mm
   */
  public record ShoeHeel(String name, double heelMm) {}

  /** Of all shoes those beyond are kept. */
  public AnkleRange {
    List<ShoeHeel> all = List.copyOf(shoes);
    OptionalDouble low = lowestMm;
    OptionalDouble high = highestMm;
    shoes = all.stream().filter(shoe -> left(low, high, shoe.heelMm()) != 0).toList();
  }

  /** The end of the range that is nearest to a shoe beyond it, mm. */
  public double endMm(ShoeHeel shoe) {
    return shoe.heelMm() - leftMm(shoe);
  }

  /** By how much a shoe's heel stays higher than the nearest one that can be set, mm. */
  public double leftMm(ShoeHeel shoe) {
    return left(lowestMm, highestMm, shoe.heelMm());
  }

  private static double left(OptionalDouble lowestMm, OptionalDouble highestMm, double heelMm) {
    return Math.max(0, heelMm - highestMm.orElse(heelMm))
        + Math.min(0, heelMm - lowestMm.orElse(heelMm));
  }

  /**
   * Whether every offset stays within its tolerance, with 95 %, in a shoe beyond the range with the
   * ankle set to its nearest end.
   *
   * @param answers how the offsets answer a heel; of one or more
   */
  public boolean staysWithin(ShoeHeel shoe, List<HeelAnswer> answers) {
    double left = leftMm(shoe);
    return answers.stream()
        .allMatch(answer -> left >= answer.lowestHeelMm() && left <= answer.highestHeelMm());
  }
}
