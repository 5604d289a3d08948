package caryatid.entry;

import caryatid.sheet.AmputationLevel;
import caryatid.sheet.ProstheticSide;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Whose prosthesis a record is about.
 *
 * @param wearer a code, never a name
 * @param side on which side
 * @param level the level of amputation
 * @param bodyMassKg body mass, kg
 * @param mobilityGrade mobility grade, 0 to 4
 * @param note what else is to be said
 */
public record RecordOpening(
    String wearer,
    ProstheticSide side,
    AmputationLevel level,
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

  @Override
  public EntryKind kind() {
    return EntryKind.OPENING;
  }
}
