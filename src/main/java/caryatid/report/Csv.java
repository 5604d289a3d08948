package caryatid.report;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.format.JsonNumber;
import caryatid.format.ResultSpellings;
import caryatid.loadline.Finding;
import caryatid.loadline.Target;
import caryatid.uncertainty.Estimate;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The findings as a table for spreadsheets (RFC 4180): a row a finding, numbers as in the JSON,
 * whatever the language. A text that a spreadsheet would take for a formula is led by an
 * apostrophe.
 */
public final class Csv {
  private static final List<String> HEADER =
      List.of(
          "state",
          "wearer",
          "stood-at",
          "plane",
          "side",
          "landmark",
          "line-of",
          "offset-mm",
          "standard-uncertainty-mm",
          "degrees-of-freedom",
          "expanded-95-mm",
          "recommended-mm",
          "lowest-mm",
          "highest-mm",
          "probability-within",
          "verdict",
          "source");

  /** A result holds one state; the column stays for programs that read it. */
  private static final String ONLY_STATE = "1";

  private Csv() {}

  /** All findings of a result, UTF-8. */
  public static byte[] of(Result result) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(HEADER);
    for (Finding finding : result.state().findings()) {
      rows.add(row(result.state(), finding));
    }
    return file(rows);
  }

  /** Rows of cells, the header first, as a file in UTF-8. */
  static byte[] file(List<List<String>> rows) {
    return rows.stream()
        .map(row -> row.stream().map(Csv::quoted).collect(Collectors.joining(",", "", "\r\n")))
        .collect(Collectors.joining())
        .getBytes(StandardCharsets.UTF_8);
  }

  private static List<String> row(AlignmentState state, Finding finding) {
    var trial = state.trial();
    Estimate mm = finding.offset().mm();
    Target target = finding.target();
    return List.of(
        ONLY_STATE,
        text(trial.wearer()),
        trial.at().toString(),
        ResultSpellings.plane(finding.offset().plane()),
        ResultSpellings.side(finding.offset().side()),
        text(finding.offset().landmark()),
        ResultSpellings.line(finding.offset().of()),
        JsonNumber.of(mm.value()),
        JsonNumber.of(mm.standardUncertainty()),
        Double.isInfinite(mm.degreesOfFreedom()) ? "" : JsonNumber.of(mm.degreesOfFreedom()),
        JsonNumber.of(mm.expanded(Estimate.COVERAGE)),
        JsonNumber.of(target.recommendedMm()),
        JsonNumber.of(target.lowestMm()),
        JsonNumber.of(target.highestMm()),
        JsonNumber.of(finding.probabilityWithin()),
        ResultSpellings.verdict(finding.verdict()),
        text(target.source()));
  }

  /** Free text, so that no cell starts a formula. */
  static String text(String words) {
    return !words.isEmpty() && "=+-@\t\r\n".indexOf(words.charAt(0)) >= 0 ? "'" + words : words;
  }

  private static String quoted(String cell) {
    return cell.matches("(?s).*[\",\r\n].*") ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
  }
}
