package caryatid.sheet;

import caryatid.recording.model.Sensors;
import caryatid.recording.model.Sensors.EightChannels;
import caryatid.recording.model.Sensors.LoadCell;
import caryatid.recording.model.Sensors.LoadCells;
import caryatid.recording.model.Sensors.RawChannel;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The raw sensors of a plate that exports neither a centre of pressure nor moments. */
final class SensorSection {
  private static final ValueParser<Double> PLACE_MM = ValueParsers.number(-10_000, 10_000);
  private static final ValueParser<Double> HALF_MM = ValueParsers.numberAbove(0, 10_000);
  private static final ValueParser<Double> CALIBRATION = ValueParsers.number(-1e9, 1e9);

  private SensorSection() {}

  static Optional<Sensors> sensors(Section plate) {
    if (plate.has("cells") && plate.has("eight-channels")) {
      plate.refuse(plate.place("eight-channels"), DescriptionProblem.SENSORS_TWICE);
    }
    Optional<Sensors> cells = cells(plate);
    Optional<Sensors> channels =
        plate.optionalSection("eight-channels").flatMap(SensorSection::eightChannels);
    return cells.or(() -> channels);
  }

  private static Optional<Sensors> cells(Section plate) {
    List<Optional<LoadCell>> cells = plate.sections("cells", SensorSection::cell);
    if (!plate.has("cells") || cells.stream().anyMatch(Optional::isEmpty)) {
      return Optional.empty();
    }
    if (cells.size() < 2) {
      plate.refuse(plate.place("cells"), DescriptionProblem.TOO_FEW_CELLS);
      return Optional.empty();
    }
    return Optional.of(new LoadCells(cells.stream().flatMap(Optional::stream).toList()));
  }

  private static Optional<LoadCell> cell(Section section) {
    Optional<String> column = section.required("column", ValueParsers.TEXT);
    Optional<Double> right = section.required("right-mm", PLACE_MM);
    Optional<Double> anterior = section.required("anterior-mm", PLACE_MM);
    return section.build(
        () -> new LoadCell(column.orElseThrow(), right.orElseThrow(), anterior.orElseThrow()));
  }

  private static Optional<Sensors> eightChannels(Section section) {
    Optional<Map<RawChannel, String>> columns =
        section.requiredSection("columns").flatMap(SensorSection::rawColumns);
    Optional<Double> a = section.required("a-mm", HALF_MM);
    Optional<Double> b = section.required("b-mm", HALF_MM);
    Optional<Double> az0 = section.required("az0-mm", PLACE_MM);
    Optional<Double> horizontal = calibration(section, "horizontal-n-per-unit");
    Optional<Double> vertical = calibration(section, "vertical-n-per-unit");
    return section.build(
        () ->
            new EightChannels(
                columns.orElseThrow(),
                a.orElseThrow(),
                b.orElseThrow(),
                az0.orElseThrow(),
                horizontal.orElseThrow(),
                vertical.orElseThrow()));
  }

  private static Optional<Double> calibration(Section section, String key) {
    Optional<Double> value = section.required(key, CALIBRATION);
    if (value.isPresent() && value.get() == 0) {
      section.refuse(section.place(key), DescriptionProblem.NO_CALIBRATION);
    }
    return value;
  }

  private static Optional<Map<RawChannel, String>> rawColumns(Section section) {
    Map<RawChannel, String> columns = new EnumMap<>(RawChannel.class);
    for (RawChannel channel : RawChannel.values()) {
      section
          .required(ValueParsers.lower(channel.lastPart()), ValueParsers.TEXT)
          .ifPresent(column -> columns.put(channel, column));
    }
    return section.build(() -> columns);
  }
}
