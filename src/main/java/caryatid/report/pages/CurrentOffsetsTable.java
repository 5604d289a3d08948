package caryatid.report.pages;

import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.report.pages.Block.Prose;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.TableColumn;
import caryatid.views.OffsetSeries;
import caryatid.views.RecordView;
import caryatid.views.ResultOrigin;
import caryatid.views.StandChange;
import caryatid.wording.LandmarkWords;
import caryatid.wording.OffsetWords;
import caryatid.wording.ResultWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Where the load line runs now, against every target. */
final class CurrentOffsetsTable {
  private final RecordView view;
  private final boolean kneeMayBend;
  private final Wording wording;

  CurrentOffsetsTable(RecordView view, boolean kneeMayBend, Wording wording) {
    this.view = view;
    this.kneeMayBend = kneeMayBend;
    this.wording = wording;
  }

  /** The table; empty if no stand was compared with a target. */
  List<Block> blocks() {
    List<TableColumn> columns =
        List.of(
            column("Findings.PLANE", 15, false),
            column("Findings.LANDMARK", 36, false),
            column("Findings.OFFSET", 17, true),
            column("Findings.DIRECTION", 16, false),
            column("Findings.UNCERTAINTY", 14, true),
            column("Findings.TARGET", 37, false),
            column("Findings.RESULT", 44, false),
            column("Findings.SOURCE", 15, true),
            column("FittingReport.STAND", 27, false));
    return view.offsets().isEmpty()
        ? List.of()
        : blocks(
            new Table(
                columns,
                view.offsets().stream()
                    .flatMap(series -> series.current().stream().map(now -> row(series, now)))
                    .toList()));
  }

  /** Below the table, its sources, and which of its stands were before the last change. */
  private List<Block> blocks(Table table) {
    List<Block> blocks = new ArrayList<>(List.of(table));
    new ResultWords(wording)
        .undecided(current().map(OffsetSeries.Measured::verdict).toList(), kneeMayBend)
        .ifPresent(next -> blocks.add(new Prose(next, false)));
    String numbered =
        IntStream.range(0, sources().size())
            .mapToObj(i -> (i + 1) + "\u00a0" + sources().get(i))
            .collect(Collectors.joining("; "));
    blocks.add(new Prose(wording.fill("Findings.SOURCES", Argument.text(numbered)), false));
    current()
        .map(OffsetSeries.Measured::entry)
        .distinct()
        .sorted()
        .flatMap(entry -> changedSince(entry).stream())
        .forEach(blocks::add);
    return blocks;
  }

  private Stream<OffsetSeries.Measured> current() {
    return view.offsets().stream().flatMap(series -> series.current().stream());
  }

  private List<String> sources() {
    return current().map(OffsetSeries.Measured::source).distinct().toList();
  }

  private Optional<Prose> changedSince(int entry) {
    return StandChange.since(view.valid(), entry)
        .map(
            bench ->
                new Prose(
                    wording.fill(
                        "FittingReport.CHANGED_SINCE",
                        Argument.count(entry),
                        Argument.count(bench.number())),
                    false));
  }

  private TableColumn column(String key, double parts, boolean numbers) {
    return new TableColumn(wording.word(key), parts, numbers);
  }

  private List<String> row(OffsetSeries series, OffsetSeries.Measured now) {
    return List.of(
        wording.word(series.plane()),
        LandmarkWords.of(view, series.side(), wording).name(series.landmark(), series.side())
            + ", "
            + wording.word(series.side()),
        wording.signed(now.offsetMm(), Unit.MM),
        new OffsetWords(wording).direction(series.plane(), now.offsetMm()),
        wording.plain(now.expandedMm(), Unit.MM),
        wording.fill(
            "Findings.RECOMMENDED",
            Argument.text(wording.signed(now.recommendedMm(), Unit.MM)),
            Argument.text(wording.signed(now.lowestMm(), Unit.MM)),
            Argument.text(wording.signed(now.highestMm(), Unit.MM))),
        new ResultWords(wording)
            .result(now.verdict(), now.offsetMm(), now.lowestMm(), now.highestMm()),
        Integer.toString(sources().indexOf(now.source()) + 1),
        now.stand() + (now.typed() ? wording.word(ResultOrigin.TYPED) : ""));
  }
}
