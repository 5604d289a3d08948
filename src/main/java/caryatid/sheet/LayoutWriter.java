package caryatid.sheet;

import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.TimeBase;
import caryatid.sheet.yaml.ValueParsers;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** Writes the part of a plate description about an export's layout and times. */
final class LayoutWriter {
  private static final String UNKNOWN = "unknown";

  private LayoutWriter() {}

  static Map<String, String> export(ExportLayout layout, Set<ImportProblem> open) {
    Map<String, String> values = new LinkedHashMap<>();
    layout.encoding().ifPresent(e -> values.put("encoding", YamlWords.text(e)));
    layout.delimiter().ifPresent(d -> values.put("delimiter", ExportSection.delimiter(d)));
    layout.decimalMark().ifPresent(m -> values.put("decimal-mark", ExportSection.decimalMark(m)));
    layout.headerLine().ifPresent(n -> values.put("header-line", Integer.toString(n)));
    layout.firstDataLine().ifPresent(n -> values.put("first-data-line", Integer.toString(n)));
    if (!layout.columns().isEmpty()) {
      values.put(
          "columns",
          "[" + String.join(", ", layout.columns().stream().map(YamlWords::text).toList()) + "]");
    }
    layout.recording().ifPresent(n -> values.put("recording", Integer.toString(n)));
    if (open.contains(ImportProblem.WHICH_RECORDING)) {
      values.put("recording", UNKNOWN);
    }
    if (open.contains(ImportProblem.THOUSANDS)) {
      values.put("decimal-mark", UNKNOWN);
    }
    return values;
  }

  static Map<String, String> time(TimeBase time, Set<ImportProblem> open) {
    Map<String, String> values = new LinkedHashMap<>();
    time.column().ifPresent(c -> values.put("column", YamlWords.text(c)));
    time.unit().ifPresent(u -> values.put("unit", ValueParsers.wordFor(u)));
    time.rateHz().ifPresent(r -> values.put("rate-hz", YamlWords.number(r)));
    if (open.contains(ImportProblem.NO_RATE)
        || open.contains(ImportProblem.RATE_UNCLEAR)
        || open.contains(ImportProblem.RATE_OF_ROWS)
        || open.contains(ImportProblem.WHOLE_SECONDS)) {
      values.put("rate-hz", UNKNOWN);
    }
    if (open.contains(ImportProblem.TIME_UNIT) || open.contains(ImportProblem.TIME_UNIT_WRONG)) {
      values.put("unit", UNKNOWN);
    }
    return values;
  }
}
