package caryatid.report;

import caryatid.fitting.OffsetSeries;
import caryatid.fitting.RecordView;
import caryatid.fitting.StandChange;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.report.Block.Column;
import caryatid.report.Block.Prose;
import caryatid.report.Block.Table;
import caryatid.wording.OffsetWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where the load line runs now, against every target. */
final class OffsetsNow {
  private final RecordView view;
  private final Wording wording;

  OffsetsNow(RecordView view, Wording wording) {
    this.view = view;
    this.wording = wording;
  }

  /** The table; none where no stand was held against a target. */
  List<Block> blocks() {
    List<Column> columns =
        List.of(
            column("Findings.PLANE", 14, false),
            column("Findings.LANDMARK", 24, false),
            column("Findings.OFFSET", 16, true),
            column("Findings.DIRECTION", 17, false),
            column("Findings.UNCERTAINTY", 13, true),
            column("Findings.TARGET", 13, true),
            column("Findings.TOLERANCE", 21, false),
            column("Findings.SOURCE", 27, false),
            column("Findings.RESULT", 27, false),
            column("FittingReport.STAND", 18, false));
    return view.offsets().isEmpty()
        ? List.of()
        : blocks(
            new Table(
                columns,
                view.offsets().stream()
                    .flatMap(series -> series.current().stream().map(now -> row(series, now)))
                    .toList()));
  }

  /** Below the table, which of its stands were before the last change. */
  private List<Block> blocks(Table table) {
    List<Block> blocks = new ArrayList<>(List.of(table));
    view.offsets().stream()
        .flatMap(series -> series.current().stream())
        .map(OffsetSeries.Measured::entry)
        .distinct()
        .sorted()
        .flatMap(entry -> changedSince(entry).stream())
        .forEach(blocks::add);
    return blocks;
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

  private Column column(String key, double parts, boolean numbers) {
    return new Column(wording.word(key), parts, numbers);
  }

  private List<String> row(OffsetSeries series, OffsetSeries.Measured now) {
    return List.of(
        wording.word(series.plane()),
        series.landmark() + ", " + wording.word(series.side()),
        wording.signed(now.offsetMm(), Unit.MM),
        new OffsetWords(wording).direction(series.plane(), now.offsetMm()),
        wording.plain(now.expandedMm(), Unit.MM),
        wording.signed(now.recommendedMm(), Unit.MM),
        wording.fill(
            "Findings.FROM_TO",
            Argument.text(wording.signed(now.lowestMm(), Unit.MM)),
            Argument.text(wording.signed(now.highestMm(), Unit.MM))),
        now.source(),
        wording.word(now.verdict()),
        now.stand());
  }
}
