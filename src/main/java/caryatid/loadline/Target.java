package caryatid.loadline;

import caryatid.remark.Coded;
import caryatid.standing.LoadLineOwner;
import java.util.Optional;

/**
 * A recommended offset of the load line from a landmark.
 *
 * @param at the landmark and the plane it is for
 * @param recommendedMm recommended offset, mm, signed as offsets are
 * @param belowMm tolerance below it, mm, not negative
 * @param aboveMm tolerance above it, mm, not negative; above and below are not both 0
 * @param source the document it comes from, as the clinician cites it
 * @param line whose load line it is meant for: a foot's own unless the sheet says whole body
 * @param condition what else it is valid for (footwear, knee mode), in the clinician's words
 * @param lookAt what the document says to check if the line is too far to one side
 */
public record Target(
    LandmarkInPlane at,
    double recommendedMm,
    double belowMm,
    double aboveMm,
    String source,
    MeantFor line,
    Optional<String> condition,
    Optional<OffTargetHints> lookAt)
    implements AtLandmark {
  /** Whose load line a target is meant for. */
  public enum MeantFor implements Coded {
    FOOT("MeantFor.FOOT"),
    WHOLE_BODY("MeantFor.WHOLE_BODY");

    private final String code;

    MeantFor(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  /**
   * @throws IllegalArgumentException if a number is out of its range or the source is blank
   */
  public Target {
    if (!Double.isFinite(recommendedMm)
        || !(belowMm >= 0)
        || !(aboveMm >= 0)
        || !(belowMm + aboveMm > 0)) {
      throw new IllegalArgumentException(recommendedMm + " -" + belowMm + " +" + aboveMm);
    }
    if (source.isBlank()) {
      throw new IllegalArgumentException("a target needs a source");
    }
  }

  /** Whose load line it is meant for, by its leg. */
  public LoadLineOwner lineOf() {
    return line == MeantFor.FOOT ? LoadLineOwner.foot(side()) : LoadLineOwner.WHOLE_BODY;
  }

  /** The smallest offset that is within, mm. */
  public double lowestMm() {
    return recommendedMm - belowMm;
  }

  /** The largest offset that is within, mm. */
  public double highestMm() {
    return recommendedMm + aboveMm;
  }
}
