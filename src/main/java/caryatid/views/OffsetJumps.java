package caryatid.views;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.StateOffset;
import caryatid.entry.BenchAlignment;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.SettingUnit;
import caryatid.fitting.FittingRecord;
import caryatid.geometry.Plane;
import caryatid.loadline.Landmark;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Offset;
import caryatid.remark.Argument;
import caryatid.remark.Question;
import caryatid.remark.Unit;
import caryatid.sheet.Footwear;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Asks about what differs from the stand before by more than what was changed between them can
 * explain: an offset that jumps, heights that stayed although the heel is another. An offset is the
 * same wherever on the plate the feet were put; marks alone are not.
 */
final class OffsetJumps {
  private static final Pattern AMOUNT =
      Pattern.compile(
          "(\\d+(?:[.,]\\d+)?)\\s*(mm|cm|\u00b0|deg|grad|degr|grado)", Pattern.CASE_INSENSITIVE);

  private final FittingRecord record;
  private final Entry last;
  private final AlignmentState before;
  private final AlignmentState after;

  OffsetJumps(FittingRecord record, Entry last, AlignmentState before, AlignmentState after) {
    this.record = record;
    this.last = last;
    this.before = before;
    this.after = after;
  }

  List<Question> questions() {
    List<Question> questions = new ArrayList<>();
    landmarks().forEach(mark -> oldHeight(mark).ifPresent(questions::add));
    for (StateOffset offset : after.offsets()) {
      if (offset.offset().plane() == Plane.SAGITTAL
          && offset.offset().kind() == LoadLineMethod.VERTICAL) {
        jump(offset).ifPresent(questions::add);
      }
    }
    return questions;
  }

  private List<Landmark> landmarks() {
    return after.stands().get(0).landmarks();
  }

  private Optional<Question> oldHeight(Landmark mark) {
    double heelThen = before.trial().footwear().heelHeightMm();
    double heelNow = after.trial().footwear().heelHeightMm();
    boolean stayed =
        Math.abs(heelNow - heelThen) > Footwear.OTHER_HEEL_MM
            && before.stands().get(0).landmarks().stream()
                .filter(l -> l.name().equals(mark.name()) && l.side() == mark.side())
                .anyMatch(
                    l -> Math.abs(l.heightMm() - mark.heightMm()) < ChangeLimits.SAME_HEIGHT_MM);
    return stayed
        ? Optional.of(
            Question.of(
                RecordQuestion.OLD_HEIGHT,
                mark.name() + " height",
                Argument.text(mark.name()),
                mm(mark.heightMm()),
                Argument.count(last.number()),
                mm(heelThen),
                mm(heelNow)))
        : Optional.empty();
  }

  private Optional<Question> jump(StateOffset now) {
    Offset offset = now.offset();
    Optional<StateOffset> earlier =
        before.offsets().stream().filter(o -> o.offset().isSameAs(offset)).findFirst();
    OptionalDouble explained = explainedMm(offset);
    if (earlier.isEmpty() || explained.isEmpty()) {
      return Optional.empty();
    }
    double then = earlier.get().offset().mm().value();
    double differs = Math.abs(offset.mm().value() - then);
    return differs
            > chanceMm(earlier.get(), now) + ChangeLimits.TIMES_GEOMETRY * explained.getAsDouble()
        ? Optional.of(
            Question.of(
                RecordQuestion.OFFSET_JUMPS,
                "jump of " + offset.landmark(),
                Argument.text(offset.landmark()),
                Argument.term(offset.plane()),
                mm(then),
                Argument.count(last.number()),
                mm(offset.mm().value())))
        : Optional.empty();
  }

  /** By how much the two may differ by chance: the larger of what counts as a change in each. */
  private static double chanceMm(StateOffset then, StateOffset now) {
    double most = Math.max(then.smallestDifferenceMm(), now.smallestDifferenceMm());
    return Math.min(ChangeLimits.UNEXPLAINED_MM, most);
  }

  /** By how much what was changed can move a line; empty where that cannot be told. */
  private OptionalDouble explainedMm(Offset offset) {
    double heightMm =
        landmarks().stream()
            .filter(l -> l.name().equals(offset.landmark()) && l.side() == offset.side())
            .mapToDouble(Landmark::heightMm)
            .findFirst()
            .orElse(0);
    OptionalDouble bench = benchMm(heightMm);
    OptionalDouble said = saidMm(heightMm);
    if (bench.isEmpty() || said.isEmpty()) {
      return OptionalDouble.empty();
    }
    double heelMm =
        after.trial().footwear().heelHeightMm() - before.trial().footwear().heelHeightMm();
    return OptionalDouble.of(
        Math.max(bench.getAsDouble(), said.getAsDouble())
            + Math.abs(heelMm) / ChangeLimits.HEEL_TO_BALL_MM * heightMm);
  }

  /** What the bench alignment changed since; empty where it sets what was not set before. */
  private OptionalDouble benchMm(double heightMm) {
    Map<BenchAlignment.ItemKey, BenchAlignment.Item> was = new HashMap<>();
    boolean since = false;
    double explained = 0;
    for (Entry entry : record.valid()) {
      since |= entry.number() == last.number();
      if (since && entry.kind() == EntryKind.COMPONENTS) {
        return OptionalDouble.empty();
      }
      if (entry.content() instanceof BenchAlignment bench) {
        for (BenchAlignment.Item item : bench.items()) {
          BenchAlignment.Item old = was.put(item.key(), item);
          if (since && (old == null || old.unit() != item.unit())) {
            return OptionalDouble.empty();
          }
          explained += since ? movesMm(item.set().subtract(old.set()), item.unit(), heightMm) : 0;
        }
      }
    }
    return OptionalDouble.of(explained);
  }

  private static double movesMm(BigDecimal changed, SettingUnit unit, double heightMm) {
    double by = Math.abs(changed.doubleValue());
    return switch (unit) {
      case MM -> by;
      case DEG -> Math.toRadians(by) * heightMm;
      case NEWTON_METRE -> 0;
    };
  }

  /** The amounts in the sheet's own words; empty where they say a change without an amount. */
  private OptionalDouble saidMm(double heightMm) {
    Optional<String> said = after.trial().notes().lastChange();
    if (said.isEmpty() || said.get().toLowerCase(Locale.ROOT).matches("(none|kein|aucun|ning).*")) {
      return OptionalDouble.of(0);
    }
    List<MatchResult> amounts = AMOUNT.matcher(said.get()).results().toList();
    return amounts.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(amounts.stream().mapToDouble(a -> saidMm(a, heightMm)).sum());
  }

  private static double saidMm(MatchResult amount, double heightMm) {
    double number = Double.parseDouble(amount.group(1).replace(',', '.'));
    return switch (amount.group(2).toLowerCase(Locale.ROOT)) {
      case "mm" -> number;
      case "cm" -> 10 * number;
      default -> Math.toRadians(number) * heightMm;
    };
  }

  private static Argument mm(double value) {
    return Argument.of(value, Unit.MM);
  }
}
