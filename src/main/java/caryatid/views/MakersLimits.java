package caryatid.views;

import caryatid.entry.BodyMassSource;
import caryatid.entry.Components.ComponentLimits;
import caryatid.entry.Entry;
import caryatid.entry.OwnSetting;
import caryatid.entry.Range;
import caryatid.entry.RecordOpening;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.entry.form.Choices;
import caryatid.remark.Argument;
import caryatid.remark.Question;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.sheet.TrialSheet;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Compares the wearer and the shoes with the limits that the makers of the components state. */
public final class MakersLimits {
  private final List<Entry> entries;
  private final List<Remark> remarks = new ArrayList<>();

  private MakersLimits(List<Entry> entries) {
    this.entries = entries;
  }

  /**
   * What is outside a limit.
   *
   * @param entries the entries that are valid, in order of time; of each part that components are
   *     said of, the newest entry that names it counts, and the newest body mass, the one that was
   *     written and the one that the plates measured, and every shoe
   */
  static List<Remark> check(List<Entry> entries) {
    MakersLimits limits = new MakersLimits(entries);
    CurrentComponent.of(entries).forEach(component -> limits.check(component.limits()));
    return List.copyOf(limits.remarks);
  }

  /**
   * What a stand exceeds that is to be kept: its body mass, its heel, and the wearer's own setting
   * that no later one brought within the limits.
   *
   * @param entries the entries that are valid, in order of time
   */
  public static List<Question> questions(List<Entry> entries, StandSummary stand) {
    MakersLimits limits = new MakersLimits(entries);
    return CurrentComponent.of(entries).stream()
        .map(CurrentComponent::limits)
        .flatMap(component -> limits.questions(component, stand))
        .toList();
  }

  private Stream<Question> questions(ComponentLimits component, StandSummary stand) {
    return Stream.of(
            stand
                .bodyMassKg()
                .or(() -> written().reduce((earlier, later) -> later))
                .filter(mass -> isAbove(mass, component))
                .map(mass -> massQuestion(component, mass)),
            stand
                .heelHeightMm()
                .filter(heel -> isOutside(heel, component))
                .map(heel -> heelQuestion(RecordQuestion.HEEL_BEYOND_LIMITS, component, heel)),
            ownHeel(component)
                .map(
                    heel ->
                        heelQuestion(RecordQuestion.OWN_SETTING_BEYOND_LIMITS, component, heel)))
        .flatMap(Optional::stream);
  }

  private static Question massQuestion(ComponentLimits component, BigDecimal mass) {
    BigDecimal highest = component.bodyMassHighestKg().orElseThrow();
    return Question.of(
        RecordQuestion.MASS_ABOVE_LIMIT,
        answer(component) + "up to " + upTo(mass) + " kg, allowed " + rounded(highest) + " kg",
        Argument.text(name(component)),
        LegSuffix.behind(component.side()),
        kg(mass),
        kg(highest));
  }

  private static Question heelQuestion(
      RecordQuestion topic, ComponentLimits component, BigDecimal heelMm) {
    String own = topic == RecordQuestion.OWN_SETTING_BEYOND_LIMITS ? "set to heel " : "heel ";
    Argument lowest = limit(component.heelHeightLowestMm(), Range.HEEL_MM.lowest());
    Argument highest = limit(component.heelHeightHighestMm(), Range.HEEL_MM.highest());
    return Question.of(
        topic,
        answer(component) + own + rounded(heelMm) + " mm",
        Argument.text(name(component)),
        LegSuffix.behind(component.side()),
        Argument.of(heelMm.doubleValue(), Unit.MM),
        lowest,
        highest);
  }

  private static String answer(ComponentLimits component) {
    String leg = component.side().map(side -> " " + Choices.SIDE.code(side)).orElse("");
    return TrialSheet.BEYOND_LIMIT + name(component) + leg + ", ";
  }

  /** What the plates weigh differs a little from stand to stand. */
  private static String upTo(BigDecimal massKg) {
    return massKg.setScale(0, RoundingMode.CEILING).toPlainString();
  }

  private static String rounded(BigDecimal number) {
    return number.setScale(1, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString();
  }

  private void check(ComponentLimits component) {
    Argument what = Argument.text(name(component));
    mass(component, what, LimitRemark.BODY_MASS_ABOVE, written());
    mass(component, what, LimitRemark.MEASURED_MASS_ABOVE, measured());
    grade()
        .filter(grade -> isOutside(grade, component))
        .ifPresent(
            grade ->
                remarks.add(
                    Remark.of(
                        LimitRemark.MOBILITY_GRADE_OUTSIDE,
                        what,
                        Argument.count(grade),
                        LegSuffix.behind(component.side()))));
    heels()
        .filter(heel -> isOutside(heel, component))
        .distinct()
        .forEach(
            heel ->
                remarks.add(
                    Remark.of(
                        LimitRemark.HEEL_HEIGHT_OUTSIDE,
                        what,
                        Argument.of(heel.doubleValue(), Unit.MM),
                        LegSuffix.behind(component.side()))));
    ownSetting(component, what);
  }

  /** What it is and what it is called; once where one says both. */
  private static String name(ComponentLimits component) {
    boolean both = TermOrText.fold(component.name()).contains(TermOrText.fold(component.what()));
    return both ? component.name() : component.what() + " " + component.name();
  }

  /** Open until the wearer sets it within the range. */
  private void ownSetting(ComponentLimits component, Argument what) {
    ownHeel(component)
        .ifPresent(
            heel ->
                remarks.add(
                    Remark.of(
                        LimitRemark.OWN_SETTING_OUTSIDE,
                        what,
                        Argument.of(heel.doubleValue(), Unit.MM),
                        LegSuffix.behind(component.side()),
                        limit(component.heelHeightLowestMm(), Range.HEEL_MM.lowest()),
                        limit(component.heelHeightHighestMm(), Range.HEEL_MM.highest()))));
  }

  private Optional<BigDecimal> ownHeel(ComponentLimits component) {
    return Entry.latest(entries, OwnSetting.class)
        .flatMap(OwnSetting::heelHeightSetMm)
        .filter(heel -> isOutside(heel, component));
  }

  private static Argument limit(Optional<BigDecimal> stated, double otherwise) {
    return Argument.of(stated.map(BigDecimal::doubleValue).orElse(otherwise), Unit.MM);
  }

  private void mass(
      ComponentLimits component, Argument what, LimitRemark remark, Stream<BigDecimal> masses) {
    masses
        .reduce((earlier, later) -> later)
        .filter(mass -> isAbove(mass, component))
        .ifPresent(
            mass ->
                remarks.add(
                    Remark.of(
                        remark,
                        what,
                        kg(mass),
                        kg(component.bodyMassHighestKg().orElseThrow()),
                        LegSuffix.behind(component.side()))));
  }

  private Stream<BigDecimal> written() {
    return entries.stream()
        .flatMap(
            entry ->
                entry.content() instanceof RecordOpening opening
                    ? opening.bodyMassKg().stream()
                    : entry
                        .content(StandSummary.class)
                        .filter(stood -> !isMeasured(stood))
                        .flatMap(StandSummary::bodyMassKg)
                        .stream());
  }

  private Stream<BigDecimal> measured() {
    return Entry.contents(entries, StandSummary.class)
        .filter(MakersLimits::isMeasured)
        .flatMap(stood -> stood.bodyMassKg().stream());
  }

  private static boolean isMeasured(StandSummary stood) {
    return stood.bodyMassFrom().filter(BodyMassSource.PLATE::equals).isPresent();
  }

  private static boolean isAbove(BigDecimal mass, ComponentLimits component) {
    return component.bodyMassHighestKg().filter(highest -> mass.compareTo(highest) > 0).isPresent();
  }

  private static boolean isOutside(int grade, ComponentLimits component) {
    OptionalInt lowest = component.mobilityGradeLowest();
    OptionalInt highest = component.mobilityGradeHighest();
    return lowest.isPresent() && grade < lowest.getAsInt()
        || highest.isPresent() && grade > highest.getAsInt();
  }

  private static boolean isOutside(BigDecimal heelMm, ComponentLimits component) {
    return component.heelHeightLowestMm().filter(l -> heelMm.compareTo(l) < 0).isPresent()
        || component.heelHeightHighestMm().filter(h -> heelMm.compareTo(h) > 0).isPresent();
  }

  private Stream<BigDecimal> heels() {
    Stream<BigDecimal> shoes =
        LatestShoe.all(entries).stream().map(shoe -> shoe.said().heelHeightMm());
    Optional<BigDecimal> stand =
        Entry.latest(entries, StandSummary.class).flatMap(StandSummary::heelHeightMm);
    return Stream.concat(stand.stream(), shoes);
  }

  private Optional<Integer> grade() {
    return Entry.contents(entries, RecordOpening.class)
        .flatMap(opening -> opening.mobilityGrade().stream().boxed())
        .reduce((earlier, later) -> later);
  }

  private static Argument kg(BigDecimal mass) {
    return Argument.of(mass.doubleValue(), Unit.KG);
  }
}
