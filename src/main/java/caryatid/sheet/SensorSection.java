package caryatid.sheet;

import caryatid.recording.Sensors;
import caryatid.recording.Sensors.EightChannels;
import caryatid.recording.Sensors.LoadCell;
import caryatid.recording.Sensors.LoadCells;
import caryatid.recording.Sensors.RawChannel;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The raw sensors of a plate that exports neither a centre of pressure nor moments. */
final class SensorSection {
  private static final Form<Double> PLACE_MM = Forms.number(-10_000, 10_000);
  private static final Form<Double> HALF_MM = Forms.numberAbove(0, 10_000);
  private static final Form<Double> CALIBRATION = Forms.number(-1_000_000, 1_000_000);

  private SensorSection() {}

  static Optional<Sensors> sensors(Section plate) {
    Optional<Sensors> eight =
        plate.optionalSection("eight-channels").flatMap(SensorSection::eightChannels);
    List<Optional<LoadCell>> cells = plate.sections("cells", SensorSection::cell);
    if (plate.has("cells") && plate.has("eight-channels")) {
      plate.refuse(plate.place("eight-channels"), Describing.SENSORS_TWICE);
    } else if (plate.has("cells") && cells.size() < 2) {
      plate.refuse(plate.place("cells"), Describing.TOO_FEW_CELLS);
    } else if (plate.has("cells") && cells.stream().allMatch(Optional::isPresent)) {
      return Optional.of(new LoadCells(cells.stream().flatMap(Optional::stream).toList()));
    }
    return eight;
  }

  private static Optional<LoadCell> cell(Section section) {
    Optional<String> column = section.required("column", Forms.TEXT);
    Optional<Double> right = section.required("right-mm", PLACE_MM);
    Optional<Double> anterior = section.required("anterior-mm", PLACE_MM);
    return section.build(
        () -> new LoadCell(column.orElseThrow(), right.orElseThrow(), anterior.orElseThrow()));
  }

  private static Optional<Sensors> eightChannels(Section section) {
    Optional<Map<RawChannel, String>> columns =
        section.requiredSection("columns").flatMap(SensorSection::columns);
    Optional<Double> a = section.required("a-mm", HALF_MM);
    Optional<Double> b = section.required("b-mm", HALF_MM);
    Optional<Double> az0 = section.required("az0-mm", PLACE_MM);
    Optional<Double> across = section.required("horizontal-n-per-unit", CALIBRATION);
    Optional<Double> down = section.required("vertical-n-per-unit", CALIBRATION);
    for (String key : List.of("horizontal-n-per-unit", "vertical-n-per-unit")) {
      if ((key.startsWith("h") ? across : down).filter(n -> n == 0).isPresent()) {
        section.refuse(section.place(key), Describing.NO_CALIBRATION);
      }
    }
    return section.build(
        () ->
            new EightChannels(
                columns.orElseThrow(),
                a.orElseThrow(),
                b.orElseThrow(),
                az0.orElseThrow(),
                across.orElseThrow(),
                down.orElseThrow()));
  }

  private static Optional<Map<RawChannel, String>> columns(Section section) {
    Map<RawChannel, String> columns = new EnumMap<>(RawChannel.class);
    for (RawChannel channel : RawChannel.values()) {
      section
          .required(Forms.wordFor(channel), Forms.TEXT)
          .ifPresent(column -> columns.put(channel, column));
    }
    return section.build(() -> columns);
  }
}
