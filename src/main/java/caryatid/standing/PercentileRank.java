package caryatid.standing;

import caryatid.remark.Coded;
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
public record PercentileRank(Measure measure, double value, int fromPercent, int toPercent) {

  /** Measures for which percentiles are known. */
  public enum Measure implements Coded {
    SD_ANTERIOR("Measure.SD_ANTERIOR", Unit.MM),
    SD_RIGHT("Measure.SD_RIGHT", Unit.MM),
    RANGE_ANTERIOR("Measure.RANGE_ANTERIOR", Unit.MM),
    MEAN_SPEED("Measure.MEAN_SPEED", Unit.MM_PER_S);

    private final String code;
    private final Unit unit;

    Measure(String code, Unit unit) {
      this.code = code;
      this.unit = unit;
    }

    @Override
    public String code() {
      return code;
    }

    /** The unit of its values. */
    public Unit unit() {
      return unit;
    }
  }
}
