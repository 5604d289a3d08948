package caryatid.report;

import caryatid.loadline.LandmarkKind;
import caryatid.remark.Argument;
import caryatid.remark.Problem;
import caryatid.remark.Unit;
import caryatid.report.picture.XmlEscapes;
import caryatid.uncertainty.ModifiedZScores;
import caryatid.wording.ResultWords;
import caryatid.wording.Wording;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The findings of many states on one page for a browser that asks nothing of any other place: a
 * summary for each landmark, a table that can be sorted, and what could not be checked.
 */
public final class BatchPage {
  private static final List<String> COLUMNS =
      List.of("state", "wearer", "at", "landmark", "offset", "drawing", "recommended", "verdict");

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm xxx", Locale.ROOT);

  private final Wording wording;
  private final Links links;
  private final StringBuilder out = new StringBuilder();

  private BatchPage(Links links, Wording wording) {
    this.links = links;
    this.wording = wording;
  }

  /**
   * What is to be read of a state before its findings.
   *
   * @param name its name
   * @param unsafe what is unsafe, in words
   * @param problems why it could not be checked; empty where it was
   */
  public record State(String name, List<String> unsafe, List<Problem> problems) {
    public State {
      unsafe = List.copyOf(unsafe);
      problems = List.copyOf(problems);
    }
  }

  /**
   * Where the results lie, and the reports if there are any; folders beside the page.
   *
   * @param results of the results
   * @param reports of the reports
   */
  public record Links(String results, Optional<String> reports) {}

  /** The page, UTF-8, with findings and states in the order of the states. */
  public static byte[] of(
      List<FindingRow> found, List<State> states, Links links, Wording wording) {
    List<FindingRow> findings = UnusualOffsets.marked(found);
    BatchPage page = new BatchPage(links, wording);
    page.head();
    page.counts(findings, states);
    page.unsafe(states);
    page.refused(states);
    page.summary(findings);
    page.table(findings);
    page.out.append("</main>\n<script>\n").append(resource("batch.js"));
    page.out.append("</script>\n</body>\n</html>\n");
    return page.out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String resource(String name) {
    try (InputStream file = BatchPage.class.getResourceAsStream(name)) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void head() {
    String title = XmlEscapes.escape(wording.word("BatchPage.title"));
    out.append("<!DOCTYPE html>\n<html lang=\"")
        .append(wording.locale().toLanguageTag())
        .append("\">\n<head>\n<meta charset=\"utf-8\">\n<link rel=\"icon\" href=\"data:,\">\n")
        .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
        .append(title)
        .append("</title>\n<style>\n")
        .append(resource("batch.css"))
        .append("</style>\n</head>\n<body>\n<main>\n<h1>")
        .append(title)
        .append("</h1>\n");
    paragraph(wording.word("BatchPage.caution"));
  }

  private void paragraph(String words) {
    out.append("<p>").append(XmlEscapes.escape(words)).append("</p>\n");
  }

  private void heading(String key) {
    out.append("<h2>").append(XmlEscapes.escape(wording.word(key))).append("</h2>\n");
  }

  private void counts(List<FindingRow> findings, List<State> states) {
    long refused = states.stream().filter(state -> !state.problems().isEmpty()).count();
    paragraph(
        wording.fill(
            "BatchPage.counts",
            Argument.count(states.size()),
            Argument.count(refused),
            Argument.count(findings.size())));
  }

  private void unsafe(List<State> states) {
    if (states.stream().allMatch(state -> state.unsafe().isEmpty())) {
      return;
    }
    heading("BatchPage.unsafe");
    out.append("<ul>\n");
    states.forEach(s -> s.unsafe().forEach(words -> item(List.of(s.name()), words)));
    out.append("</ul>\n");
  }

  private void refused(List<State> states) {
    Map<String, List<String>> reasons = new LinkedHashMap<>();
    for (State state : states) {
      for (Problem problem : state.problems()) {
        String reason = wording.sayWithin(problem);
        reasons.computeIfAbsent(reason, r -> new ArrayList<>()).add(state.name());
      }
    }
    if (reasons.isEmpty()) {
      return;
    }
    heading("BatchPage.refused");
    out.append("<ul>\n");
    reasons.forEach((reason, names) -> item(names, reason));
    out.append("</ul>\n");
  }

  /** One reason for all states that it holds for. */
  private void item(List<String> names, String words) {
    String count = names.size() > 1 ? names.size() + ": " : "";
    out.append("<li><b>").append(XmlEscapes.escape(count + String.join(", ", names)));
    out.append("</b> ").append(XmlEscapes.escape(words)).append("</li>\n");
  }

  private String target(FindingRow row) {
    String landmark =
        row.landmark() == LandmarkKind.OTHER ? row.landmarkName() : wording.word(row.landmark());
    return landmark + ", " + wording.word(row.plane());
  }

  private Map<String, List<FindingRow>> byTarget(List<FindingRow> findings) {
    return findings.stream()
        .collect(Collectors.groupingBy(this::target, LinkedHashMap::new, Collectors.toList()));
  }

  private void summary(List<FindingRow> findings) {
    heading("BatchPage.summary");
    out.append("<table>\n<thead><tr>");
    List.of("landmark", "met", "undecided", "undecidable", "notMet", "widths", "cause", "outliers")
        .forEach(name -> headerCell(wording.word("BatchPage." + name)));
    out.append("</tr></thead>\n<tbody>\n");
    byTarget(findings).forEach(this::summaryRow);
    out.append("</tbody>\n</table>\n");
    if (findings.stream().anyMatch(FindingRow::undecidable)) {
      paragraph(wording.word("BatchPage.whatDecides"));
    }
    paragraph(wording.fill("BatchPage.outlierRule", Argument.count(ModifiedZScores.FEWEST)));
  }

  private void headerCell(String words) {
    out.append("<th scope=\"col\">").append(XmlEscapes.escape(words)).append("</th>");
  }

  private void summaryRow(String target, List<FindingRow> rows) {
    out.append("<tr>");
    cell(target, "");
    BatchSummary summary = new BatchSummary(rows, wording);
    summary.numbers().forEach(number -> cell(number, "number"));
    summary.words().forEach(words -> cell(words, ""));
    out.append("</tr>\n");
  }

  private void cell(String words, String look) {
    out.append(look.isEmpty() ? "<td>" : "<td class=\"" + look + "\">");
    out.append(XmlEscapes.escape(words)).append("</td>");
  }

  private void table(List<FindingRow> findings) {
    heading("BatchPage.findings");
    out.append("<table class=\"sortable\">\n<thead><tr>");
    COLUMNS.forEach(name -> headerCell(wording.word("BatchPage." + name)));
    out.append("</tr></thead>\n<tbody>\n");
    findings.forEach(this::row);
    out.append("</tbody>\n</table>\n");
    paragraph(wording.word("BatchPage.drawingNote"));
  }

  private void row(FindingRow row) {
    out.append("<tr><td data-value=\"").append(XmlEscapes.escape(row.state())).append("\">");
    link(links.results() + "/" + row.state() + ".json", row.state());
    links
        .reports()
        .ifPresent(
            folder -> {
              out.append(" ");
              link(folder + "/" + row.state() + "-report.pdf", wording.word("BatchPage.report"));
            });
    out.append("</td>");
    cell(row.wearer(), "");
    cell(row.at().format(TIME), "");
    cell(target(row) + ", " + wording.word(row.side()), "");
    double mm = row.offset().value();
    out.append("<td class=\"number\" data-value=\"").append(mm).append("\">");
    out.append(XmlEscapes.escape(wording.signed(mm, Unit.MM) + " ± " + width(row))).append("</td>");
    out.append("<td>").append(BatchDrawing.svg(row)).append("</td>");
    out.append("<td class=\"number\" data-value=\"").append(row.recommendedMm()).append("\">");
    out.append(XmlEscapes.escape(tolerance(row))).append("</td>");
    cell(verdict(row), "");
    out.append("</tr>\n");
  }

  private String verdict(FindingRow row) {
    List<String> parts = new ArrayList<>();
    parts.add(
        new ResultWords(wording)
            .result(row.verdict(), row.offset().value(), row.lowestMm(), row.highestMm()));
    if (row.undecidable()) {
      parts.add(wording.word("OffsetWords.undecidable"));
    }
    if (row.isUnusual()) {
      parts.add(wording.word("BatchPage.unusual"));
    }
    return String.join("; ", parts);
  }

  private String width(FindingRow row) {
    return wording.number(row.expandedMm(), Unit.MM);
  }

  private String tolerance(FindingRow row) {
    return wording.fill(
        "BatchPage.tolerance",
        Argument.of(row.recommendedMm(), Unit.MM),
        Argument.of(row.lowestMm(), Unit.MM),
        Argument.of(row.highestMm(), Unit.MM));
  }

  private void link(String to, String words) {
    String address =
        Arrays.stream(to.split("/"))
            .map(part -> URLEncoder.encode(part, StandardCharsets.UTF_8).replace("+", "%20"))
            .collect(Collectors.joining("/"));
    out.append("<a href=\"").append(address).append("\">");
    out.append(XmlEscapes.escape(words)).append("</a>");
  }
}
