package caryatid.sheet;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.Sensors;
import caryatid.recording.model.Sensors.EightChannels;
import caryatid.recording.model.Sensors.LoadCell;
import caryatid.recording.model.Sensors.LoadCells;
import caryatid.sheet.yaml.ValueParsers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Writes the section of one plate in a plate description. */
final class PlateWriter {
  private static final String UNKNOWN = "unknown";

  private PlateWriter() {}

  static Map<String, String> units(PlateLayout plate, Set<ImportProblem> open) {
    Map<String, String> values = new LinkedHashMap<>();
    ask(values, "force", open, ImportProblem.FORCE_UNIT);
    ask(values, "moment", open, ImportProblem.MOMENT_UNIT);
    ask(values, "cop", open, ImportProblem.COP_UNIT);
    plate.forceUnit().ifPresent(u -> values.put("force", u.symbol()));
    plate.momentUnit().ifPresent(u -> values.put("moment", u.symbol()));
    plate.copUnit().ifPresent(u -> values.put("cop", u.symbol()));
    return values;
  }

  private static void ask(
      Map<String, String> values, String key, Set<ImportProblem> open, ImportProblem question) {
    if (open.contains(question)) {
      values.put(key, UNKNOWN);
    }
  }

  /** What is said of the directions; nothing of a plate that measures both. */
  static Optional<String> measures(PlateLayout plate, Set<ImportProblem> open) {
    if (!plate.measures().sideways()) {
      return Optional.of(ValueParsers.wordFor(plate.measures()));
    }
    return open.contains(ImportProblem.ONE_DIRECTION) ? Optional.of(UNKNOWN) : Optional.empty();
  }

  static Map<String, String> edges(PlateLayout plate) {
    Map<String, String> values = new LinkedHashMap<>();
    plate
        .size()
        .ifPresent(
            s -> {
              values.put("left", YamlWords.number(s.leftMm()));
              values.put("right", YamlWords.number(s.rightMm()));
              values.put("rear", YamlWords.number(s.rearMm()));
              values.put("front", YamlWords.number(s.frontMm()));
            });
    return values;
  }

  static Map<String, String> trueOrigin(PlateLayout plate, Set<ImportProblem> open) {
    Map<String, String> values = new LinkedHashMap<>();
    if (plate.trueOrigin().isEmpty()) {
      List.of("x", "y", "z").forEach(key -> ask(values, key, open, ImportProblem.TRUE_ORIGIN));
    }
    plate
        .trueOrigin()
        .ifPresent(
            o -> {
              values.put("x", YamlWords.number(o.xMm()));
              values.put("y", YamlWords.number(o.yMm()));
              values.put("z", YamlWords.number(o.zMm()));
            });
    return values;
  }

  static Map<String, String> exportOrigin(PlateLayout plate, Set<ImportProblem> open) {
    Map<String, String> values = new LinkedHashMap<>();
    if (plate.exportOrigin().isEmpty()) {
      List.of("right", "anterior")
          .forEach(key -> ask(values, key, open, ImportProblem.EXPORT_ORIGIN));
    }
    plate
        .exportOrigin()
        .ifPresent(
            o -> {
              values.put("right", YamlWords.number(o.rightMm()));
              values.put("anterior", YamlWords.number(o.anteriorMm()));
            });
    return values;
  }

  /** The lines of a plate's raw sensors. */
  static List<String> sensors(Sensors sensors) {
    return sensors instanceof LoadCells cells ? cells(cells) : eight((EightChannels) sensors);
  }

  private static List<String> cells(LoadCells cells) {
    List<String> lines = new ArrayList<>(List.of("    cells:"));
    for (LoadCell cell : cells.cells()) {
      Map<String, String> values = new LinkedHashMap<>();
      values.put("column", YamlWords.text(cell.column()));
      values.put("right-mm", YamlWords.number(cell.rightMm()));
      values.put("anterior-mm", YamlWords.number(cell.anteriorMm()));
      lines.add("      - {" + YamlWords.flow(values) + "}");
    }
    return lines;
  }

  private static List<String> eight(EightChannels eight) {
    Map<String, String> columns = new LinkedHashMap<>();
    new TreeMap<>(eight.columns())
        .forEach(
            (channel, name) -> columns.put(ValueParsers.wordFor(channel), YamlWords.text(name)));
    return List.of(
        "    eight-channels:",
        "      columns: {" + YamlWords.flow(columns) + "}",
        "      a-mm: " + YamlWords.number(eight.aMm()),
        "      b-mm: " + YamlWords.number(eight.bMm()),
        "      az0-mm: " + YamlWords.number(eight.az0Mm()),
        "      horizontal-n-per-unit: " + YamlWords.number(eight.horizontalNPerUnit()),
        "      vertical-n-per-unit: " + YamlWords.number(eight.verticalNPerUnit()));
  }
}
