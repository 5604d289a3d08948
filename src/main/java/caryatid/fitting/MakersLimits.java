package caryatid.fitting;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.MassFrom;
import caryatid.entry.form.Answers;
import caryatid.entry.form.Field;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Holds the wearer and the shoes against the limits that the components' makers state. */
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
    limits.components().forEach(limits::check);
    return List.copyOf(limits.remarks);
  }

  /**
   * Whoever exchanges one part names that one alone; the others and their limits are still there.
   */
  private List<Answers> components() {
    Map<String, List<Answers>> parts = new LinkedHashMap<>();
    entries.stream()
        .filter(e -> e.kind() == EntryKind.COMPONENTS)
        .map(e -> e.content().rows("components"))
        .map(
            rows ->
                rows.stream()
                    .collect(
                        Collectors.groupingBy(
                            MakersLimits::part, LinkedHashMap::new, Collectors.toList())))
        .forEach(parts::putAll);
    return parts.values().stream().flatMap(List::stream).toList();
  }

  private static String part(Answers component) {
    return component.words("what").orElseThrow().strip().toLowerCase(Locale.ROOT);
  }

  private void check(Answers component) {
    Argument what =
        Argument.text(
            component.words("what").orElseThrow() + " " + component.words("name").orElseThrow());
    mass(component, what, LimitRemark.BODY_MASS_ABOVE, e -> !isMeasured(e));
    mass(component, what, LimitRemark.MEASURED_MASS_ABOVE, MakersLimits::isMeasured);
    newest("mobility-grade")
        .filter(
            grade -> isOutside(grade, component, "mobility-grade-lowest", "mobility-grade-highest"))
        .ifPresent(
            grade ->
                remarks.add(
                    Remark.of(
                        LimitRemark.MOBILITY_GRADE_OUTSIDE,
                        what,
                        Argument.count(grade.intValue()))));
    heels()
        .filter(
            heel -> isOutside(heel, component, "heel-height-lowest-mm", "heel-height-highest-mm"))
        .distinct()
        .forEach(
            heel ->
                remarks.add(
                    Remark.of(
                        LimitRemark.HEEL_HEIGHT_OUTSIDE,
                        what,
                        Argument.of(heel.doubleValue(), Unit.MM))));
  }

  private void mass(Answers component, Argument what, LimitRemark remark, Predicate<Entry> from) {
    Optional<BigDecimal> heaviest = component.number("body-mass-highest-kg");
    entries.stream()
        .filter(from)
        .flatMap(e -> e.content().number("body-mass-kg").stream())
        .reduce((earlier, later) -> later)
        .filter(mass -> heaviest.filter(h -> mass.compareTo(h) > 0).isPresent())
        .ifPresent(
            mass -> remarks.add(Remark.of(remark, what, kg(mass), kg(heaviest.orElseThrow()))));
  }

  private static boolean isMeasured(Entry entry) {
    String plate = Field.word(MassFrom.PLATE);
    return entry.content().words("body-mass-from").filter(plate::equals).isPresent();
  }

  private static boolean isOutside(
      BigDecimal value, Answers component, String lowest, String highest) {
    return component.number(lowest).filter(l -> value.compareTo(l) < 0).isPresent()
        || component.number(highest).filter(h -> value.compareTo(h) > 0).isPresent();
  }

  private Stream<BigDecimal> heels() {
    Stream<Answers> shoes = Shoe.all(entries).stream().map(Shoe::said);
    Stream<Answers> stand = latest(EntryKind.STAND).stream().map(Entry::content);
    return Stream.concat(stand, shoes).flatMap(a -> a.number("heel-height-mm").stream());
  }

  private Optional<BigDecimal> newest(String key) {
    return entries.stream()
        .flatMap(e -> e.content().number(key).stream())
        .reduce((earlier, later) -> later);
  }

  private Optional<Entry> latest(EntryKind kind) {
    return entries.stream().filter(e -> e.kind() == kind).reduce((earlier, later) -> later);
  }

  private static Argument kg(BigDecimal mass) {
    return Argument.of(mass.doubleValue(), Unit.KG);
  }
}
