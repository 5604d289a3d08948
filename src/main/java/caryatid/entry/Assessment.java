package caryatid.entry;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The wearer's condition and the fit of the socket, before anything is adjusted.
 *
 * @param contractures which joints lack movement, and how much
 * @param contractureDeg by how much the joint above the socket lacks extension, deg; of two legs,
 *     the larger
 * @param socketFit how the wearer sits in the socket
 * @param liner which liner is worn
 * @param sockPly ply of the socks
 * @param suspension what holds the prosthesis on
 * @param skin how the skin is
 * @param shoe the shoe worn
 * @param minutesSinceDonning minutes since the prosthesis was put on
 * @param socketComfort the socket comfort score, 0 to 10
 * @param pain pain, 0 (none) to 10
 * @param wearerSays how it is in the wearer's words
 * @param note further remarks
 */
public record Assessment(
    Optional<String> contractures,
    Optional<BigDecimal> contractureDeg,
    Optional<String> socketFit,
    Optional<String> liner,
    OptionalInt sockPly,
    Optional<String> suspension,
    Optional<String> skin,
    Optional<String> shoe,
    Optional<BigDecimal> minutesSinceDonning,
    OptionalInt socketComfort,
    OptionalInt pain,
    Optional<String> wearerSays,
    Optional<String> note)
    implements EntryContent {

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public Assessment {
    Range.CONTRACTURE_DEG.require(contractureDeg);
    Range.SOCK_PLY.require(sockPly);
    Range.MINUTES.require(minutesSinceDonning);
    Range.SCORE.require(socketComfort);
    Range.SCORE.require(pain);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.ASSESSMENT;
  }
}
