package caryatid.entry;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The wearer's own attempts at setting an adjustable part.
 *
 * @param what what is set
 * @param attempts how often it was tried
 * @param succeeded how often it went well
 * @param heelHeightWantedMm the heel height wanted, mm
 * @param heelHeightSetMm the heel height that was set, mm
 * @param note further remarks
 */
public record OwnSetting(
    String what,
    int attempts,
    int succeeded,
    Optional<BigDecimal> heelHeightWantedMm,
    Optional<BigDecimal> heelHeightSetMm,
    Optional<String> note)
    implements EntryContent {
  /** Heel heights that differ by no more are the same, mm (common practice, no source). */
  public static final BigDecimal SAME_MM = new BigDecimal(3);

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public OwnSetting {
    Range.ATTEMPTS.require(OptionalInt.of(attempts));
    Range.SUCCESSES.require(OptionalInt.of(succeeded));
    if (succeeded > attempts) {
      throw new IllegalArgumentException(succeeded + " of " + attempts);
    }
    Range.HEEL_MM.require(heelHeightWantedMm);
    Range.HEEL_MM.require(heelHeightSetMm);
  }

  /** Whether the heel height that was set is another than the one wanted, by more than 3 mm. */
  public boolean missed() {
    return heelHeightWantedMm.isPresent()
        && heelHeightSetMm
            .filter(set -> set.subtract(heelHeightWantedMm.get()).abs().compareTo(SAME_MM) > 0)
            .isPresent();
  }

  @Override
  public EntryKind kind() {
    return EntryKind.OWN_SETTING;
  }
}
