package caryatid.sheet;

import caryatid.recording.model.Channel;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.model.MeasuredDirections;
import caryatid.recording.model.MomentUnit;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.PlateLayout.ExportOrigin;
import caryatid.recording.model.PlateLayout.Extent;
import caryatid.recording.model.PlateLayout.TrueOrigin;
import caryatid.recording.model.Sensors;
import caryatid.remark.Argument;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads one plate of a plate description. */
final class PlateSection {
  private static final ValueParser<Double> PLACE_MM = ValueParsers.number(-10_000, 10_000);
  private static final ValueParser<LengthUnit> LENGTH = ValueParsers.word(LengthUnit.class);
  private static final ValueParser<ForceUnit> FORCE = ValueParsers.choice(forces());
  private static final ValueParser<MomentUnit> MOMENT = ValueParsers.choice(moments());

  private PlateSection() {}

  static Optional<PlateLayout> plate(Section section) {
    Optional<String> name = section.required("name", ValueParsers.TEXT);
    Optional<MeasuredDirections> measures =
        section.optional("measures", ValueParsers.word(MeasuredDirections.class));
    Map<Channel, String> columns =
        section
            .optionalSection("columns")
            .flatMap(within -> columns(within, measures.map(MeasuredDirections::sideways)))
            .orElse(Map.of());
    Optional<Units> units = section.optionalSection("units").flatMap(PlateSection::units);
    Optional<Extent> edges = section.optionalSection("edges-mm").flatMap(PlateSection::edges);
    Optional<TrueOrigin> trueOrigin =
        section.optionalSection("true-origin-mm").flatMap(PlateSection::trueOrigin);
    Optional<ExportOrigin> exportOrigin =
        section.optionalSection("export-origin-mm").flatMap(PlateSection::exportOrigin);
    Optional<Sensors> sensors = SensorSection.sensors(section);
    return section.build(
        () ->
            new PlateLayout(
                name.orElseThrow(),
                columns,
                units.flatMap(Units::cop),
                units.flatMap(Units::force),
                units.flatMap(Units::moment),
                edges,
                trueOrigin,
                exportOrigin,
                sensors,
                measures.orElse(MeasuredDirections.BOTH)));
  }

  private record Units(
      Optional<LengthUnit> cop, Optional<ForceUnit> force, Optional<MomentUnit> moment) {}

  private static Optional<Units> units(Section section) {
    Optional<LengthUnit> cop = section.optional("cop", LENGTH);
    Optional<ForceUnit> force = section.optional("force", FORCE);
    Optional<MomentUnit> moment = section.optional("moment", MOMENT);
    return section.build(() -> new Units(cop, force, moment));
  }

  /**
   * The columns.
   *
   * @param both whether the plate measures both directions, where that is said
   */
  private static Optional<Map<Channel, String>> columns(Section section, Optional<Boolean> both) {
    Map<Channel, String> columns = new EnumMap<>(Channel.class);
    Set<String> used = new HashSet<>();
    for (Channel channel : Channel.values()) {
      String key = ValueParsers.wordFor(channel).replace(' ', '-');
      section.optional(key, ValueParsers.TEXT).ifPresent(column -> columns.put(channel, column));
      Optional.ofNullable(columns.get(channel))
          .filter(column -> !used.add(column))
          .ifPresent(
              column ->
                  section.refuse(
                      section.place(key), DescriptionProblem.COLUMN_TWICE, Argument.text(column)));
    }
    oneDirection(columns)
        .filter(only -> both.orElse(true))
        .ifPresent(
            only -> {
              String key = ValueParsers.wordFor(only).replace(' ', '-');
              section.refuse(
                  section.place(key), DescriptionProblem.ONE_DIRECTION, Argument.text(key));
            });
    return section.build(() -> columns);
  }

  /** The only centre of pressure of a plate that says nothing of the other direction. */
  private static Optional<Channel> oneDirection(Map<Channel, String> columns) {
    boolean moments =
        columns.keySet().stream().anyMatch(c -> c.quantity() == Channel.Quantity.MOMENT);
    List<Channel> centres =
        columns.keySet().stream().filter(c -> c.quantity() == Channel.Quantity.COP).toList();
    return centres.size() == 1 && !moments ? Optional.of(centres.get(0)) : Optional.empty();
  }

  private static Optional<Extent> edges(Section section) {
    Optional<Double> left = section.required("left", PLACE_MM);
    Optional<Double> right = section.required("right", PLACE_MM);
    Optional<Double> rear = section.required("rear", PLACE_MM);
    Optional<Double> front = section.required("front", PLACE_MM);
    if (swapped(left, right) || swapped(rear, front)) {
      section.refuse(section.place(), DescriptionProblem.EDGES_SWAPPED);
    }
    return section.build(
        () ->
            new Extent(
                left.orElseThrow(), right.orElseThrow(), rear.orElseThrow(), front.orElseThrow()));
  }

  private static boolean swapped(Optional<Double> low, Optional<Double> high) {
    return low.isPresent() && high.isPresent() && low.get() >= high.get();
  }

  private static Optional<TrueOrigin> trueOrigin(Section section) {
    Optional<Double> x = section.required("x", PLACE_MM);
    Optional<Double> y = section.required("y", PLACE_MM);
    Optional<Double> z = section.required("z", PLACE_MM);
    return section.build(() -> new TrueOrigin(x.orElseThrow(), y.orElseThrow(), z.orElseThrow()));
  }

  private static Optional<ExportOrigin> exportOrigin(Section section) {
    Optional<Double> right = section.required("right", PLACE_MM);
    Optional<Double> anterior = section.required("anterior", PLACE_MM);
    return section.build(() -> new ExportOrigin(right.orElseThrow(), anterior.orElseThrow()));
  }

  private static Map<String, ForceUnit> forces() {
    Map<String, ForceUnit> words = new LinkedHashMap<>();
    words.put("N", ForceUnit.N);
    words.put("kg", ForceUnit.KG);
    return words;
  }

  private static Map<String, MomentUnit> moments() {
    Map<String, MomentUnit> words = new LinkedHashMap<>();
    words.put("N m", MomentUnit.N_M);
    words.put("N mm", MomentUnit.N_MM);
    return words;
  }
}
