package caryatid.entry;

import caryatid.geometry.Side;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The comparison of the legs' lengths.
 *
 * @param landmarks heights above the floor; none where only the rest is known
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
  private static final BigDecimal MOST_MM = BigDecimal.TEN;

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

    private BigDecimal beyondMm(BigDecimal intendedMm) {
      return leftMm.subtract(rightMm).abs().subtract(intendedMm).abs();
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

  /** Whether heights on both legs are compared. */
  public boolean comparesHeights() {
    return !landmarks.isEmpty();
  }

  /**
   * The landmarks at which the legs differ by more, or by less, than is intended, by more than 10
   * mm (common practice, no source); the one that differs most first. The side of the prosthesis is
   * not known here, so that a sound leg which is the shorter one counts as much.
   */
  public List<Height> notAsIntended() {
    BigDecimal intendedMm = intendedShorteningMm.orElse(BigDecimal.ZERO);
    Comparator<Height> apart = Comparator.comparing(row -> row.beyondMm(intendedMm));
    return landmarks.stream()
        .filter(row -> row.beyondMm(intendedMm).compareTo(MOST_MM) > 0)
        .sorted(apart.reversed())
        .toList();
  }

  @Override
  public EntryKind kind() {
    return EntryKind.LEG_LENGTH;
  }
}
