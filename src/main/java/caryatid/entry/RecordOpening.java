package caryatid.entry;

import caryatid.geometry.Side;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.ProstheticSide;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Whose prosthesis a record is about.
 *
 * @param wearer a code, never a name
 * @param side on which side
 * @param level the level of amputation; of both legs where they have no levels of their own
 * @param levelLeft that of the left leg, where both have a prosthesis
 * @param levelRight that of the right leg, where both have one
 * @param bodyMassKg body mass, kg
 * @param mobilityGrade mobility grade, 0 to 4
 * @param note further remarks
 */
public record RecordOpening(
    String wearer,
    ProstheticSide side,
    AmputationLevel level,
    Optional<AmputationLevel> levelLeft,
    Optional<AmputationLevel> levelRight,
    Optional<BigDecimal> bodyMassKg,
    OptionalInt mobilityGrade,
    Optional<String> note)
    implements EntryContent {

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public RecordOpening {
    Range.BODY_MASS_KG.require(bodyMassKg);
    Range.MOBILITY_GRADE.require(mobilityGrade);
  }

  /** The level of a leg. */
  public AmputationLevel level(Side leg) {
    return (leg == Side.LEFT ? levelLeft : levelRight).orElse(level);
  }

  /** The levels of the legs that have a prosthesis, each once. */
  public List<AmputationLevel> levels() {
    return side.sides().stream().map(this::level).distinct().toList();
  }

  /** Whether a record is known to be of one leg, so that its items need no side. */
  public static boolean isOfOneLeg(List<Entry> valid) {
    return Entry.latest(valid, RecordOpening.class)
        .filter(opening -> opening.side() != ProstheticSide.BOTH)
        .isPresent();
  }

  @Override
  public EntryKind kind() {
    return EntryKind.OPENING;
  }
}
