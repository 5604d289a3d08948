package caryatid.fitting;

import caryatid.entry.BenchAlignment;
import caryatid.entry.RecordOpening;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import java.util.Optional;

/**
 * What an entry must say beyond its form, which is not asked of entries that were added before this
 * was known.
 */
public final class ContentCheck {
  private ContentCheck() {}

  /**
   * Requires what an addition to a record must say.
   *
   * @throws BadInput with what is missing or is of another leg
   */
  public static void check(FittingRecord record, Addition addition) throws BadInput {
    Place place = Place.of(record.code().text());
    if (addition.content() instanceof RecordOpening opening) {
      LegCheck.check(place, opening);
    }
    if (addition.content() instanceof BenchAlignment bench) {
      FastenerCheck.check(place, bench);
    }
    Optional<RecordOpening> opening = record.opening();
    if (opening.isPresent()) {
      LegCheck.check(place, opening.get(), addition.content());
    }
    StandReferenceCheck.check(record, addition);
  }

  /**
   * Requires what an opening must say.
   *
   * @throws BadInput with what is missing
   */
  public static void check(RecordCode code, Addition opening) throws BadInput {
    if (opening.content() instanceof RecordOpening said) {
      LegCheck.check(Place.of(code.text()), said);
    }
  }
}
