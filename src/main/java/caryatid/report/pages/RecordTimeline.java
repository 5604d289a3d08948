package caryatid.report.pages;

import caryatid.chart.SmallLeg;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.PrintableText;
import caryatid.chart.mark.SideBySide;
import caryatid.entry.BenchAlignment;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.StandSummary;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.report.pages.Block.Figures;
import caryatid.report.pages.Block.Heading;
import caryatid.report.pages.Block.Prose;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.TableColumn;
import caryatid.views.RecordView.TimelineRow;
import caryatid.views.ResultOrigin;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** All entries of a record in their order, day by day, with a small drawing of each stand. */
public final class RecordTimeline {
  private static final double GAP_MM = 2.5;

  private final RecordReportData data;
  private final Wording wording;
  private final double widthMm;

  public RecordTimeline(RecordReportData data, Wording wording, double widthMm) {
    this.data = data;
    this.wording = wording;
    this.widthMm = widthMm;
  }

  public List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(wording.word("FittingReport.TIMELINE")));
    if (!data.states().isEmpty()) {
      blocks.add(new Prose(wording.word("FittingReport.SMALL"), false));
    }
    days().forEach((day, lines) -> day(blocks, day, lines));
    return blocks;
  }

  private Map<String, List<TimelineRow>> days() {
    Map<String, List<TimelineRow>> days = new LinkedHashMap<>();
    for (TimelineRow line : data.view().timeline()) {
      days.computeIfAbsent(EntryTimes.day(line.entry()), d -> new ArrayList<>()).add(line);
    }
    return days;
  }

  private void day(List<Block> blocks, String day, List<TimelineRow> lines) {
    blocks.add(new Heading(day));
    for (Side side : Side.values()) {
      rows(lines, side).forEach(row -> blocks.add(figures(row)));
    }
    List<TableColumn> columns =
        List.of(column("NUMBER", 14), column("TIME", 22), column("KIND", 30), column("SAYS", 124));
    blocks.add(new Table(columns, lines.stream().flatMap(this::rows).toList()));
  }

  private TableColumn column(String name, double parts) {
    return new TableColumn(wording.word("FittingReport." + name), parts, false);
  }

  private List<Drawing> rows(List<TimelineRow> lines, Side side) {
    List<SmallLeg.Titled> states =
        lines.stream()
            .filter(line -> data.states().containsKey(line.entry().number()))
            .filter(line -> sides(line.entry()).contains(side))
            .map(line -> titled(line, side))
            .toList();
    List<Drawing> small = SmallLeg.plan(states, side, wording);
    int perRow = SideBySide.perRow(widthMm, SmallLeg.WIDTH_MM, GAP_MM);
    List<Drawing> rows = new ArrayList<>();
    for (int from = 0; from < small.size(); from += perRow) {
      List<Drawing> row = small.subList(from, Math.min(from + perRow, small.size()));
      rows.add(SideBySide.of("stands-" + row.get(0).name(), row, GAP_MM, widthMm));
    }
    return rows;
  }

  private List<Side> sides(Entry entry) {
    return data.states().get(entry.number()).trial().side().sides();
  }

  private SmallLeg.Titled titled(TimelineRow line, Side side) {
    Entry entry = line.entry();
    String number =
        wording.fill(
            "FittingReport.SMALL_TITLE",
            Argument.count(entry.number()),
            Argument.text(EntryTimes.time(entry)));
    String under =
        superseded(line)
            .orElse(entry.content(StandSummary.class).flatMap(StandSummary::footwear).orElse(""));
    return new SmallLeg.Titled(
        side.lastPart().toLowerCase(java.util.Locale.ROOT) + "-" + entry.number(),
        sides(entry).size() > 1 ? number + ", " + wording.word(side) : number,
        PrintableText.of(under),
        data.states().get(entry.number()));
  }

  private static Figures figures(Drawing row) {
    return new Figures((width, height) -> List.of(row), SmallLeg.HEIGHT_MM, SmallLeg.HEIGHT_MM);
  }

  private Stream<List<String>> rows(TimelineRow line) {
    Entry entry = line.entry();
    List<List<String>> rows = new ArrayList<>();
    for (String part : EntryCells.of(says(line))) {
      boolean first = rows.isEmpty();
      rows.add(
          List.of(
              first ? Integer.toString(entry.number()) : "",
              first ? EntryTimes.time(entry) + " " + entry.by() : "",
              first ? kind(line) : "",
              part));
    }
    return rows.stream();
  }

  private String kind(TimelineRow line) {
    String typed = line.entry().isTyped() ? wording.word(ResultOrigin.TYPED) : "";
    String kind = wording.word(line.entry().kind()) + typed;
    return superseded(line).map(by -> kind + "; " + by).orElse(kind);
  }

  private Optional<String> superseded(TimelineRow line) {
    return line.correctedBy()
        .map(by -> wording.fill("FittingReport.SUPERSEDED", Argument.count(by)));
  }

  private List<String> says(TimelineRow line) {
    Entry entry = line.entry();
    List<String> says = new ArrayList<>();
    entry
        .corrects()
        .ifPresent(
            c ->
                says.add(
                    wording.fill(
                        "FittingReport.SUPERSEDES",
                        Argument.count(c.number()),
                        Argument.text(c.why()))));
    if (entry.content() instanceof BenchAlignment bench && line.correctedBy().isEmpty()) {
      says.addAll(new ChangedSettings(data.view().valid(), entry, bench).lines(wording));
    } else {
      says.addAll(EntryCells.lines(entry.content(), wording));
    }
    if (!entry.files().isEmpty()) {
      String files = String.join(", ", entry.files().stream().map(f -> f.name()).toList());
      says.add(wording.fill("FittingReport.KEPT", Argument.text(files)));
    }
    if (entry.kind() == EntryKind.STAND && !data.states().containsKey(entry.number())) {
      says.add(wording.word("FittingReport.NO_DRAWING"));
    }
    return says;
  }
}
