package caryatid.report;

import static java.time.format.DateTimeFormatter.ISO_OFFSET_DATE_TIME;

import caryatid.format.JsonNumber;
import caryatid.format.ResultSpellings;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The findings of many states as one table for statistics, a row a finding, and what its columns
 * mean (CSV on the Web, W3C 2015). Codes and numbers only, the same in every language; what people
 * wrote in their own words comes on demand.
 */
public final class FindingsCsv {
  /** The table's name, and by the standard's rule that of its description. */
  public static final String FILE = "findings.csv";

  public static final String METADATA_FILE = FILE + "-metadata.json";

  private record Column(
      String name, String type, String meaning, Function<FindingRow, String> cell) {}

  private static final String NUMBER = "double";
  private static final String CODE = "string";
  private static final String TRUTH = "boolean";

  private static final List<Column> CODES =
      List.of(
          new Column("state", CODE, "name of the state: its sheet's", r -> Csv.text(r.state())),
          new Column("wearer", CODE, "code of the wearer", r -> Csv.text(r.wearer())),
          new Column(
              "stood-at",
              "dateTime",
              "when the wearer stood",
              r -> ISO_OFFSET_DATE_TIME.format(r.at())),
          new Column("level", CODE, "level of amputation", r -> ResultSpellings.level(r.level())),
          new Column(
              "heel-mm",
              NUMBER,
              "heel height of what was worn, mm",
              r -> JsonNumber.of(r.heelMm())),
          new Column("stands", "integer", "number of stands", r -> Integer.toString(r.stands())),
          new Column(
              "used-s",
              NUMBER,
              "how much of the stands is used, together, s",
              r -> JsonNumber.of(r.usedS())),
          new Column("plane", CODE, "plane of the offset", r -> ResultSpellings.plane(r.plane())),
          new Column("side", CODE, "side of the landmark", r -> ResultSpellings.side(r.side())),
          new Column(
              "landmark",
              CODE,
              "kind of the landmark; other for the clinic's own",
              r -> ResultSpellings.landmark(r.landmark())),
          new Column("line-of", CODE, "whose load line", r -> ResultSpellings.line(r.line())),
          new Column(
              "offset-mm",
              NUMBER,
              "offset of the load line, mm: positive in front of the landmark, or lateral of it",
              r -> JsonNumber.of(r.offset().value())),
          new Column(
              "standard-uncertainty-mm",
              NUMBER,
              "its standard uncertainty, mm",
              r -> JsonNumber.of(r.offset().standardUncertainty())),
          new Column(
              "degrees-of-freedom",
              NUMBER,
              "of the standard uncertainty; empty if infinite",
              r -> finite(r.offset().degreesOfFreedom())),
          new Column(
              "lower-95-mm",
              NUMBER,
              "lower end of the 95 % interval, mm",
              r -> JsonNumber.of(r.offset().value() - r.expandedMm())),
          new Column(
              "upper-95-mm",
              NUMBER,
              "upper end of the 95 % interval, mm",
              r -> JsonNumber.of(r.offset().value() + r.expandedMm())),
          new Column(
              "largest-cause",
              CODE,
              "cause with the largest share in the uncertainty; empty if there is none",
              r -> r.largest().map(ResultSpellings::cause).orElse("")),
          new Column(
              "recommended-mm",
              NUMBER,
              "recommended offset, mm",
              r -> JsonNumber.of(r.recommendedMm())),
          new Column(
              "lowest-mm", NUMBER, "lowest tolerated offset, mm", r -> JsonNumber.of(r.lowestMm())),
          new Column(
              "highest-mm",
              NUMBER,
              "highest tolerated offset, mm",
              r -> JsonNumber.of(r.highestMm())),
          new Column(
              "probability-within",
              NUMBER,
              "that the offset lies within the tolerance, given these measurements, 0 to 1",
              r -> JsonNumber.of(r.probabilityWithin())),
          new Column(
              "verdict",
              CODE,
              "whether the tolerance is met: within is met, inside-too-close and outside-too-close are"
                  + " undecided, outside is not met",
              r -> ResultSpellings.verdict(r.verdict())),
          new Column(
              "undecidable",
              TRUTH,
              "whether it is open because the tolerance is narrower than this measurement can decide",
              r -> Boolean.toString(r.undecidable())),
          new Column(
              "unusual",
              TRUTH,
              "whether the modified z-score of the offset is beyond 3.5 among those of the same"
                  + " landmark and plane; empty with fewer than ten of them",
              r -> r.unusual().map(String::valueOf).orElse("")),
          new Column(
              "unsafe",
              CODE,
              "codes of the remarks on what is unsafe in this state, blanks between them",
              r -> String.join(" ", r.unsafe())));

  private static final List<Column> WORDS =
      List.of(
          new Column(
              "landmark-name",
              CODE,
              "the landmark in the sheet's words",
              r -> Csv.text(r.landmarkName())),
          new Column(
              "source",
              CODE,
              "where the recommendation is from, in the sheet's words",
              r -> Csv.text(r.source())));

  private FindingsCsv() {}

  private static String finite(double degrees) {
    return Double.isInfinite(degrees) ? "" : JsonNumber.of(degrees);
  }

  private static List<Column> columns(boolean words) {
    List<Column> columns = new ArrayList<>(CODES);
    if (words) {
      columns.addAll(WORDS);
    }
    return columns;
  }

  /**
   * The table, UTF-8 (RFC 4180).
   *
   * @param words whether what people wrote in their own words is in it
   */
  public static byte[] table(List<FindingRow> findings, boolean words) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(columns(words).stream().map(Column::name).toList());
    for (FindingRow finding : UnusualOffsets.marked(findings)) {
      rows.add(columns(words).stream().map(column -> column.cell().apply(finding)).toList());
    }
    return Csv.file(rows);
  }

  /** What the columns mean, as CSV on the Web has it. */
  public static byte[] metadata(boolean words) {
    String columns =
        columns(words).stream()
            .map(
                c ->
                    """
                        {
                          "name": "%s",
                          "titles": "%s",
                          "datatype": "%s",
                          "dc:description": "%s"
                        }"""
                        .formatted(c.name().replace('-', '_'), c.name(), c.type(), c.meaning())
                        .indent(6)
                        .stripTrailing())
            .collect(Collectors.joining(",\n"));
    return """
        {
          "@context": ["http://www.w3.org/ns/csvw", {"@language": "en"}],
          "url": "%s",
          "dialect": {"lineTerminators": "\\r\\n"},
          "tableSchema": {
            "columns": [
        %s
            ]
          }
        }
        """
        .formatted(FILE, columns)
        .getBytes(StandardCharsets.UTF_8);
  }
}
