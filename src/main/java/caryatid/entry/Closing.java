package caryatid.entry;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How a visit ends: what the wearer says, and when the next visit is.
 *
 * @param socketComfort the socket comfort score, 0 to 10 (Hanspal RS, Fisher K, Nieveen R.
 *     Prosthetic socket fit comfort score. Disabil Rehabil 2003;25(22):1278-80; cited from memory)
 * @param pain pain, 0 (none) to 10
 * @param wearerSays how it is in the wearer's words
 * @param minutesStood minutes that the wearer stood
 * @param skin how the skin is
 * @param nextVisit the day of the next visit
 * @param note further remarks
 */
public record Closing(
    OptionalInt socketComfort,
    OptionalInt pain,
    Optional<String> wearerSays,
    Optional<BigDecimal> minutesStood,
    Optional<String> skin,
    Optional<LocalDate> nextVisit,
    Optional<String> note)
    implements EntryContent {
  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public Closing {
    Range.SCORE.require(socketComfort);
    Range.SCORE.require(pain);
    Range.MINUTES.require(minutesStood);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.CLOSING;
  }
}
