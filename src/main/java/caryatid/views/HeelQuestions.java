package caryatid.views;

import caryatid.entry.Entry;
import caryatid.entry.EntryContent;
import caryatid.entry.EntryQuestion;
import caryatid.entry.ShoeList;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.remark.Argument;
import caryatid.remark.Question;
import caryatid.remark.Unit;
import caryatid.sheet.Footwear;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Asks about heel heights that do not agree: of stands, of shoes, and of the ankle. */
public final class HeelQuestions {
  private static final String WHY = "why it is so";

  private HeelQuestions() {}

  /**
   * The questions about the footwear of a stand that is to be kept.
   *
   * @param before the entries that were valid before the stand, in order of time
   */
  static List<Question> of(List<Entry> before, Footwear footwear) {
    List<Question> questions = new ArrayList<>();
    BigDecimal heelMm = BigDecimal.valueOf(footwear.heelHeightMm());
    HeelSetting.last(CurrentSetting.of(before))
        .filter(set -> HeelSetting.differ(heelMm, set.row().set()))
        .ifPresent(set -> questions.add(ankle(heelMm, set)));
    LatestShoe.all(before).stream()
        .filter(shoe -> isSame(shoe.said().shoe(), footwear.description()))
        .filter(shoe -> HeelSetting.differ(heelMm, shoe.said().heelHeightMm()))
        .forEach(shoe -> questions.add(shoe(footwear, heelMm, shoe)));
    return List.copyOf(questions);
  }

  private static Question ankle(BigDecimal heelMm, CurrentSetting set) {
    return Question.of(
        RecordQuestion.ANKLE_FOR_OTHER_HEEL,
        "heel " + plain(heelMm) + " mm, ankle set for " + plain(set.row().set()) + " mm",
        mm(heelMm),
        mm(set.row().set()),
        Argument.count(set.entry()));
  }

  private static Question shoe(Footwear footwear, BigDecimal heelMm, LatestShoe shoe) {
    return Question.of(
        RecordQuestion.HEEL_OF_SHOE,
        "heel " + plain(heelMm) + " mm, entry " + shoe.entry(),
        Argument.text(footwear.description()),
        mm(heelMm),
        Argument.count(shoe.entry()),
        mm(shoe.said().heelHeightMm()));
  }

  /**
   * The questions about shoes whose heel is another one than in their stand; a note in the row
   * answers.
   *
   * @param valid the entries of the record that are valid, in order of time
   * @param added what is to be added
   */
  public static List<Question> ofShoes(List<Entry> valid, EntryContent added) {
    List<Question> questions = new ArrayList<>();
    if (added instanceof ShoeList list) {
      for (int i = 0; i < list.shoes().size(); i++) {
        String row = "shoes[" + (i + 1) + "]";
        ShoeList.Shoe shoe = list.shoes().get(i);
        if (shoe.note().isEmpty()) {
          stand(valid, shoe).flatMap(stand -> shoe(row, shoe, stand)).ifPresent(questions::add);
        }
      }
    }
    return List.copyOf(questions);
  }

  /** The stand that the shoe names, or the latest in footwear of that name. */
  private static Optional<Entry> stand(List<Entry> valid, ShoeList.Shoe shoe) {
    return valid.stream()
        .filter(e -> shoe.stand().isEmpty() || e.number() == shoe.stand().getAsInt())
        .filter(
            e ->
                e.content(StandSummary.class)
                    .filter(s -> shoe.stand().isPresent() || isIn(s, shoe.shoe()))
                    .isPresent())
        .reduce((earlier, later) -> later);
  }

  private static boolean isIn(StandSummary stand, String shoe) {
    return stand.footwear().filter(worn -> isSame(worn, shoe)).isPresent();
  }

  private static Optional<Question> shoe(String row, ShoeList.Shoe shoe, Entry stand) {
    return stand
        .content(StandSummary.class)
        .flatMap(StandSummary::heelHeightMm)
        .filter(heelMm -> HeelSetting.differ(heelMm, shoe.heelHeightMm()))
        .map(
            heelMm ->
                Question.ofField(
                    EntryQuestion.HEEL_OF_STAND,
                    row + ".note",
                    WHY,
                    Argument.text(row + ".heel-height-mm"),
                    mm(shoe.heelHeightMm()),
                    Argument.count(stand.number()),
                    mm(heelMm)));
  }

  private static boolean isSame(String one, String other) {
    return TermOrText.fold(one).equals(TermOrText.fold(other));
  }

  private static String plain(BigDecimal mm) {
    return mm.stripTrailingZeros().toPlainString();
  }

  private static Argument mm(BigDecimal value) {
    return Argument.of(value.doubleValue(), Unit.MM);
  }
}
