package caryatid.report.pages;

import caryatid.chart.OffsetsDrawing;
import caryatid.entry.BenchAlignment;
import caryatid.remark.Argument;
import caryatid.report.pages.Block.Figures;
import caryatid.report.pages.Block.Heading;
import caryatid.report.pages.Block.Prose;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.TableColumn;
import caryatid.views.OffsetSeries;
import caryatid.views.RecordView;
import caryatid.views.StandChange;
import caryatid.wording.EntryWords;
import caryatid.wording.LandmarkWords;
import caryatid.wording.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** How the offsets developed from stand to stand, and what was changed in between. */
public final class OffsetHistory {
  private final RecordView view;
  private final Wording wording;

  public OffsetHistory(RecordView view, Wording wording) {
    this.view = view;
    this.wording = wording;
  }

  public List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    if (!view.offsets().isEmpty()) {
      blocks.add(heading("OFFSETS"));
      blocks.add(new Prose(wording.word("FittingReport.HOW"), false));
    }
    view.offsets().forEach(series -> blocks.add(drawing(series)));
    if (!view.changes().isEmpty()) {
      blocks.add(heading("CHANGES"));
      blocks.add(changes());
    }
    return blocks;
  }

  private Heading heading(String of) {
    return new Heading(wording.word("FittingReport." + of));
  }

  private Figures drawing(OffsetSeries series) {
    return new Figures(
        (width, height) ->
            List.of(
                OffsetsDrawing.plan(
                    series,
                    view.changes(),
                    LandmarkWords.of(view, series.side(), wording),
                    wording,
                    width)),
        OffsetsDrawing.HEIGHT_MM,
        OffsetsDrawing.HEIGHT_MM);
  }

  private Table changes() {
    List<TableColumn> columns =
        List.of(
            column("CHANGE", 14),
            column("BETWEEN", 20),
            column("SETTINGS", 62),
            column("SAID", 48),
            column("WHY", 46));
    return new Table(columns, view.changes().stream().map(this::row).toList());
  }

  private TableColumn column(String name, double parts) {
    return new TableColumn(wording.word("FittingReport." + name), parts, false);
  }

  private List<String> row(StandChange change) {
    return List.of(
        change.name(),
        change.before() + " → " + change.stand(),
        settings(change),
        change.said().orElse("–"),
        change.why().orElse("–"));
  }

  private String settings(StandChange change) {
    List<String> parts = new ArrayList<>();
    for (StandChange.SettingChange setting : change.settings()) {
      String was = setting.was().map(this::number).orElse("?");
      String item = new EntryWords(wording).item(setting.row());
      BenchAlignment.Item row = setting.row();
      parts.add(item + ": " + was + " → " + number(row.set()) + " " + row.unit().code());
    }
    change
        .shoe()
        .ifPresent(
            shoe ->
                parts.add(
                    wording.fill(
                        "FittingReport.SHOE",
                        Argument.text(shoe.was()),
                        Argument.text(shoe.is()))));
    return parts.isEmpty() ? "–" : String.join("; ", parts);
  }

  private String number(BigDecimal number) {
    return wording.exact(number);
  }
}
