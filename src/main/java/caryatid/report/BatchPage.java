package caryatid.report;

import caryatid.loadline.LandmarkKind;
import caryatid.loadline.Verdict;
import caryatid.remark.Argument;
import caryatid.remark.Problem;
import caryatid.remark.Unit;
import caryatid.report.pages.UncertaintyTable;
import caryatid.report.picture.XmlEscapes;
import caryatid.uncertainty.ModifiedZScores;
import caryatid.wording.Wording;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

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
      List<FindingRow> findings, List<State> states, Links links, Wording wording) {
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
    list("BatchPage.unsafe", states, State::unsafe);
  }

  private void refused(List<State> states) {
    list(
        "BatchPage.refused", states, state -> state.problems().stream().map(wording::say).toList());
  }

  /** A list of what is said of states; nothing where nothing is. */
  private void list(String heading, List<State> states, Function<State, List<String>> said) {
    if (states.stream().allMatch(state -> said.apply(state).isEmpty())) {
      return;
    }
    heading(heading);
    out.append("<ul>\n");
    for (State state : states) {
      for (String words : said.apply(state)) {
        out.append("<li><b>").append(XmlEscapes.escape(state.name())).append("</b> ");
        out.append(XmlEscapes.escape(words)).append("</li>\n");
      }
    }
    out.append("</ul>\n");
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
    List.of("landmark", "met", "undecided", "notMet", "cause", "outliers")
        .forEach(name -> headerCell(wording.word("BatchPage." + name)));
    out.append("</tr></thead>\n<tbody>\n");
    byTarget(findings).forEach(this::summaryRow);
    out.append("</tbody>\n</table>\n");
    paragraph(wording.fill("BatchPage.outlierRule", Argument.count(ModifiedZScores.FEWEST)));
  }

  private void headerCell(String words) {
    out.append("<th scope=\"col\">").append(XmlEscapes.escape(words)).append("</th>");
  }

  private void summaryRow(String target, List<FindingRow> rows) {
    long met = rows.stream().filter(r -> r.verdict() == Verdict.WITHIN).count();
    long notMet = rows.stream().filter(r -> r.verdict() == Verdict.OUTSIDE).count();
    out.append("<tr>");
    cell(target, "");
    cell(Long.toString(met), "number");
    cell(Long.toString(rows.size() - met - notMet), "number");
    cell(Long.toString(notMet), "number");
    cell(mostOften(rows), "");
    cell(String.join(", ", outliers(rows)), "");
    out.append("</tr>\n");
  }

  private String mostOften(List<FindingRow> rows) {
    return rows.stream()
        .flatMap(row -> row.largest().stream())
        .collect(Collectors.groupingBy(cause -> cause, LinkedHashMap::new, Collectors.counting()))
        .entrySet()
        .stream()
        .max(Map.Entry.comparingByValue())
        .map(most -> wording.word(UncertaintyTable.key(most.getKey())) + ": " + most.getValue())
        .orElse("");
  }

  private static List<String> outliers(List<FindingRow> rows) {
    double[] scores =
        ModifiedZScores.of(rows.stream().mapToDouble(r -> r.offset().value()).toArray());
    return IntStream.range(0, scores.length)
        .filter(i -> Math.abs(scores[i]) > ModifiedZScores.LIMIT)
        .mapToObj(i -> rows.get(i).state())
        .toList();
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
    cell(wording.word(row.verdict()), "");
    out.append("</tr>\n");
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
