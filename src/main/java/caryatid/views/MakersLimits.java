package caryatid.views;

import caryatid.entry.BodyMassSource;
import caryatid.entry.Components.ComponentLimits;
import caryatid.entry.Entry;
import caryatid.entry.OwnSetting;
import caryatid.entry.Range;
import caryatid.entry.RecordOpening;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Compares the wearer and the shoes with the limits that the makers of the components state. */
final class MakersLimits {
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
    Entry.contents(entries, OwnSetting.class)
        .reduce((earlier, later) -> later)
        .flatMap(OwnSetting::heelHeightSetMm)
        .filter(heel -> isOutside(heel, component))
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

  private static Argument limit(Optional<BigDecimal> stated, double otherwise) {
    return Argument.of(stated.map(BigDecimal::doubleValue).orElse(otherwise), Unit.MM);
  }

  private void mass(
      ComponentLimits component, Argument what, LimitRemark remark, Stream<BigDecimal> masses) {
    Optional<BigDecimal> heaviest = component.bodyMassHighestKg();
    masses
        .reduce((earlier, later) -> later)
        .filter(mass -> heaviest.filter(h -> mass.compareTo(h) > 0).isPresent())
        .ifPresent(
            mass ->
                remarks.add(
                    Remark.of(
                        remark,
                        what,
                        kg(mass),
                        kg(heaviest.orElseThrow()),
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
        Entry.contents(entries, StandSummary.class)
            .reduce((earlier, later) -> later)
            .flatMap(StandSummary::heelHeightMm);
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
