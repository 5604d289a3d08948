package caryatid.entry;

import caryatid.geometry.Side;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The components and the limits that their makers state.
 *
 * @param components in their order
 * @param note further remarks
 */
public record Components(List<ComponentLimits> components, Optional<String> note)
    implements EntryContent {

  /**
   * One component.
   *
   * @param what which part it is
   * @param side on which leg; empty in a record of one leg
   * @param name what it is called
   * @param serial its serial number
   * @param ankleAxis whether the foot or the ankle unit has an ankle axis
   * @param bodyMassHighestKg the highest body mass it is for, kg
   * @param mobilityGradeLowest the lowest mobility grade it is for
   * @param mobilityGradeHighest the highest mobility grade it is for
   * @param heelHeightLowestMm the lowest heel height it is for, mm
   * @param heelHeightHighestMm the highest heel height it is for, mm
   * @param source the document that says so
   */
  public record ComponentLimits(
      String what,
      Optional<Side> side,
      String name,
      Optional<String> serial,
      Optional<Boolean> ankleAxis,
      Optional<BigDecimal> bodyMassHighestKg,
      OptionalInt mobilityGradeLowest,
      OptionalInt mobilityGradeHighest,
      Optional<BigDecimal> heelHeightLowestMm,
      Optional<BigDecimal> heelHeightHighestMm,
      Optional<String> source) {

    /**
     * @throws IllegalArgumentException if a number is outside its range
     */
    public ComponentLimits {
      Range.BODY_MASS_KG.require(bodyMassHighestKg);
      Range.MOBILITY_GRADE.require(mobilityGradeLowest);
      Range.MOBILITY_GRADE.require(mobilityGradeHighest);
      Range.HEEL_MM.require(heelHeightLowestMm);
      Range.HEEL_MM.require(heelHeightHighestMm);
      Range.requireOrder(Range.decimal(mobilityGradeLowest), Range.decimal(mobilityGradeHighest));
      Range.requireOrder(heelHeightLowestMm, heelHeightHighestMm);
    }
  }

  public Components {
    components = List.copyOf(components);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.COMPONENTS;
  }
}
