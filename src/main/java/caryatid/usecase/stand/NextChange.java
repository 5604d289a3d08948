package caryatid.usecase.stand;

import caryatid.remark.BadInput;
import caryatid.report.Pictures;
import caryatid.usecase.Records;
import caryatid.usecase.ShowRecord;
import caryatid.views.RecordAdvice;
import caryatid.wording.AdviceText;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Optional;

/**
 * What to change next at one leg, as it is shown after a result.
 *
 * @param title for which leg
 * @param sentence what it comes to
 * @param always what is said with every advice
 * @param drawing the offsets now and after the change, as SVG; empty where nothing is known of any
 * @param numbers all of it, line by line
 * @param travelMissing whether nothing is advised because no joint has its travel noted
 */
public record NextChange(
    String title,
    String sentence,
    List<String> always,
    Optional<String> drawing,
    List<String> numbers,
    boolean travelMissing) {
  public NextChange {
    always = List.copyOf(always);
    numbers = List.copyOf(numbers);
  }

  /**
   * For each leg with a prosthesis.
   *
   * @throws BadInput if there is no such record, or it is damaged, so that what was found or set
   *     may be otherwise
   */
  public static List<NextChange> of(Records records, String code, Wording wording) throws BadInput {
    return ShowRecord.advice(records, code).stream().map(leg -> of(leg, wording)).toList();
  }

  private static NextChange of(RecordAdvice leg, Wording wording) {
    return new NextChange(
        AdviceText.title(leg, wording),
        AdviceText.sentence(leg, wording),
        AdviceText.always(wording),
        Pictures.nextChange(leg, wording),
        AdviceText.lines(leg, wording),
        leg.lacksTravel());
  }
}
