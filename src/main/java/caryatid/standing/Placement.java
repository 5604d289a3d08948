package caryatid.standing;

import caryatid.remark.Unit;

/**
 * Where a stand's sway lies among that of people without a prosthesis. Given only where the
 * conditions compare.
 *
 * @param measure which measure
 * @param value its value, in the measure's unit
 * @param fromPercent so many of a hundred sway less, 0 when below the first percentile
 * @param toPercent so many of a hundred sway less or as much, 100 when above the 99th percentile
 */
public record Placement(Measure measure, double value, int fromPercent, int toPercent) {

  /** Measures for which percentiles are known. */
  public enum Measure {
    SD_ANTERIOR(Unit.MM),
    SD_RIGHT(Unit.MM),
    RANGE_ANTERIOR(Unit.MM),
    MEAN_SPEED(Unit.MM_PER_S);

    private final Unit unit;

    Measure(Unit unit) {
      this.unit = unit;
    }

    /** The unit of its values. */
    public Unit unit() {
      return unit;
    }
  }
}
