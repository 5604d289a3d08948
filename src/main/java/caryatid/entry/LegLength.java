package caryatid.entry;

import caryatid.geometry.Side;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * The comparison of the legs' lengths.
 *
 * @param landmarks heights above the floor
 * @param intendedShorteningMm by how much the prosthesis is shorter on purpose, mm
 * @param liftMm thickness of a lift, mm
 * @param liftUnder under which foot
 * @param pelvisLevel whether the pelvis is level
 * @param note further remarks
 */
public record LegLength(
    List<Height> landmarks,
    Optional<BigDecimal> intendedShorteningMm,
    Optional<BigDecimal> liftMm,
    Optional<Side> liftUnder,
    Optional<Boolean> pelvisLevel,
    Optional<String> note)
    implements EntryContent {

  /**
   * The height of a landmark on both legs.
   *
   * @param landmark which
   * @param leftMm left, mm
   * @param rightMm right, mm
   */
  public record Height(String landmark, BigDecimal leftMm, BigDecimal rightMm) {

    /**
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Height {
      Range.HEIGHT_MM.require(leftMm);
      Range.HEIGHT_MM.require(rightMm);
    }
  }

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public LegLength {
    landmarks = List.copyOf(landmarks);
    Range.SHORTENING_MM.require(intendedShorteningMm);
    Range.LIFT_MM.require(liftMm);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.LENGTH;
  }
}
