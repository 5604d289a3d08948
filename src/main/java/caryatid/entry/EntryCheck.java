package caryatid.entry;

import caryatid.loadline.Bounds;
import caryatid.loadline.GeometryLimits;
import caryatid.loadline.LimitedQuantity;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Question;
import caryatid.remark.Topic;
import caryatid.remark.Unit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Holds numbers of an entry against what they can be: refuses what cannot be, asks about what can
 * hardly be. A reason beside the number, or a note on lengths, answers and is kept with it.
 */
public final class EntryCheck {
  private static final String WHY = "why it is so";

  private final Place place;
  private final GeometryLimits limits;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Question> questions = new ArrayList<>();

  private EntryCheck(Place place, GeometryLimits limits) {
    this.place = place;
    this.limits = limits;
  }

  /**
   * The questions about an entry that no note answers.
   *
   * @throws BadInput if something in it cannot be
   */
  public static List<Question> questions(EntryContent content, Place place, GeometryLimits limits)
      throws BadInput {
    EntryCheck check = new EntryCheck(place, limits);
    if (content instanceof BenchAlignment bench) {
      check.bench(bench);
    } else if (content instanceof LegLength length) {
      check.length(length);
    } else if (content instanceof OwnSetting own) {
      check.own(own);
    }
    if (!check.problems.isEmpty()) {
      throw new BadInput(check.problems);
    }
    return List.copyOf(check.questions);
  }

  /** The question about a next visit before the day of its entry; a note that names it answers. */
  public static List<Question> aboutDay(EntryContent content, LocalDate day) {
    if (content instanceof Closing closing) {
      return closing.nextVisit().filter(next -> next.isBefore(day)).stream()
          .filter(next -> closing.note().filter(note -> note.contains(next.toString())).isEmpty())
          .map((LocalDate next) -> nextVisit(next, day))
          .toList();
    }
    return List.of();
  }

  private static Question nextVisit(LocalDate next, LocalDate day) {
    return Question.ofField(
        EntryQuestion.NEXT_VISIT_BEFORE,
        "note",
        next + ": " + WHY,
        Argument.text("next-visit"),
        Argument.text(next.toString()),
        Argument.text(day.toString()));
  }

  private void bench(BenchAlignment bench) {
    for (int i = 0; i < bench.items().size(); i++) {
      BenchAlignment.Item item = bench.items().get(i);
      String row = "items[" + (i + 1) + "]";
      limited(item).ifPresent(quantity -> setting(row, item, quantity));
      unit(row, item);
      item.recommended().ifPresent(recommended -> far(row, item, recommended.doubleValue()));
    }
  }

  /** A setting far from the recommended one without a reason: most often a slip of the hand. */
  private void far(String row, BenchAlignment.Item item, double recommended) {
    boolean angle = item.unit() == SettingUnit.DEG;
    double set = item.set().doubleValue();
    double most =
        angle ? EntryLimits.FAR_FROM_RECOMMENDED_DEG : EntryLimits.FAR_FROM_RECOMMENDED_MM;
    boolean measured = angle || item.unit() == SettingUnit.MM;
    if (measured && item.why().isEmpty() && Math.abs(set - recommended) > most) {
      Unit unit = angle ? Unit.DEG : Unit.MM;
      ask(
          EntryQuestion.FAR_FROM_RECOMMENDED,
          row + ".why",
          Argument.text(row + ".set"),
          Argument.of(set, unit),
          Argument.of(recommended, unit));
    }
  }

  private static Optional<LimitedQuantity> limited(BenchAlignment.Item item) {
    if (item.isTorque()) {
      // A torque of 0 says that it is not secured, which leads the record until it is.
      return Optional.of(LimitedQuantity.FASTENER_TORQUE)
          .filter(quantity -> item.set().signum() != 0);
    }
    return item.item()
        .code()
        .filter(code -> item.unit() == code.unit())
        .flatMap(code -> code.limited());
  }

  /** An item that is set in another unit than its own; torques have a rule of their own. */
  private void unit(String row, BenchAlignment.Item item) {
    item.item()
        .code()
        .filter(code -> code != BenchItem.FASTENERS && item.unit() != code.unit())
        .filter(code -> item.why().isEmpty())
        .ifPresent(
            code ->
                ask(
                    EntryQuestion.OTHER_UNIT,
                    row + ".why",
                    Argument.text(row + ".unit"),
                    Argument.text(item.unit().code()),
                    Argument.text(code.unit().code())));
  }

  /** An own setting that is called a success each time although the heel is not the one wanted. */
  private void own(OwnSetting own) {
    if (own.missed() && own.succeeded() == own.attempts() && own.note().isEmpty()) {
      ask(
          EntryQuestion.OWN_SETTING_DIFFERS,
          "note",
          Argument.of(own.heelHeightSetMm().orElseThrow().doubleValue(), Unit.MM),
          Argument.of(own.heelHeightWantedMm().orElseThrow().doubleValue(), Unit.MM));
    }
  }

  private void setting(String row, BenchAlignment.Item item, LimitedQuantity quantity) {
    Bounds bounds = limits.of(quantity);
    double set = item.set().doubleValue();
    Argument field = Argument.text(row + ".set");
    Argument found = Argument.of(set, quantity.unit());
    if (bounds.isImpossible(set)) {
      refuse(
          EntryQuestion.IMPOSSIBLE_SETTING,
          field,
          found,
          Argument.of(bounds.refuseBelow(), quantity.unit()),
          Argument.of(bounds.refuseAbove(), quantity.unit()));
    } else if (bounds.isOdd(set) && item.why().isEmpty()) {
      ask(
          EntryQuestion.ODD_SETTING,
          row + ".why",
          field,
          found,
          Argument.of(bounds.askBelow(), quantity.unit()),
          Argument.of(bounds.askAbove(), quantity.unit()));
    }
  }

  private void length(LegLength length) {
    boolean level = length.pelvisLevel().filter(Boolean::booleanValue).isPresent();
    if (level && length.note().isEmpty()) {
      length.notAsIntended().stream().limit(1).forEach(row -> level(length, row));
    }
    for (LegLength.Height row : length.landmarks()) {
      double leftMm = row.leftMm().doubleValue();
      double rightMm = row.rightMm().doubleValue();
      double apartMm = Math.abs(leftMm - rightMm);
      Argument[] found = {
        Argument.text(row.landmark()), Argument.of(leftMm, Unit.MM), Argument.of(rightMm, Unit.MM)
      };
      if (apartMm > EntryLimits.MOST_LEGS_DIFFER_MM) {
        refuse(EntryQuestion.IMPOSSIBLE_LENGTH, found);
      } else if ((apartMm > EntryLimits.LEGS_DIFFER_MM
              || Math.min(leftMm, rightMm) < EntryLimits.LOW_LANDMARK_MM)
          && length.note().isEmpty()) {
        ask(EntryQuestion.ODD_LENGTH, "note", found);
      }
    }
  }

  private void level(LegLength length, LegLength.Height row) {
    ask(
        EntryQuestion.LEGS_DIFFER,
        "note",
        Argument.text(row.landmark()),
        Argument.of(row.leftMm().subtract(row.rightMm()).abs().doubleValue(), Unit.MM),
        Argument.of(length.intendedShorteningMm().orElse(BigDecimal.ZERO).doubleValue(), Unit.MM));
  }

  private void refuse(Topic topic, Argument... arguments) {
    problems.add(Problem.at(place, topic, arguments));
  }

  private void ask(Topic topic, String field, Argument... arguments) {
    questions.add(Question.ofField(topic, field, WHY, arguments));
  }
}
