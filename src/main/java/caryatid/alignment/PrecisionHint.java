package caryatid.alignment;

import caryatid.remark.Coded;
import caryatid.uncertainty.Cause;

/**
 * The main cause of an offset's uncertainty, and what would reduce it most.
 *
 * @param dominant the cause that adds most
 * @param dominantShare its share of the variance, 0 to 1
 * @param remedy what would help most
 * @param halfWidthMm half-width of the 95 % interval now, mm
 * @param halfWidthThenMm the half-width to expect after the remedy, mm
 */
public record PrecisionHint(
    Cause dominant,
    double dominantShare,
    Remedy remedy,
    double halfWidthMm,
    double halfWidthThenMm) {

  /** What can be done about uncertainty. */
  public enum Remedy implements Coded {
    /** Two more stands, or three in all, stepping off between. */
    REPEAT("Remedy.REPEAT"),
    /**
     * A stand of a minute. Advised by methods up to 1 only: how far a mean wanders from stand to
     * stand does not shrink with the length of the stand, and its own uncertainty, where sway is
     * slow, hardly.
     */
    STAND_LONGER("Remedy.STAND_LONGER"),
    /** Mark and measure the landmarks twice as well. */
    MARK_BETTER("Remedy.MARK_BETTER"),
    /** Set the feet straight by a line, twice as well. */
    ALIGN_FEET("Remedy.ALIGN_FEET"),
    /** Level the plate twice as well. */
    LEVEL_PLATE("Remedy.LEVEL_PLATE"),
    /** Find the plate's accuracy with a known load, twice as well. */
    CALIBRATE_PLATE("Remedy.CALIBRATE_PLATE"),
    /** Read the landmark several times during the stand. */
    READ_LANDMARK_AGAIN("Remedy.READ_LANDMARK_AGAIN");

    private final String code;

    Remedy(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }
}
