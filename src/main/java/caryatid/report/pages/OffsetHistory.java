package caryatid.report.pages;

import caryatid.alignment.OffsetChange;
import caryatid.chart.OffsetsDrawing;
import caryatid.entry.BenchAlignment;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.report.pages.Block.Figures;
import caryatid.report.pages.Block.Heading;
import caryatid.report.pages.Block.Prose;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.TableColumn;
import caryatid.uncertainty.Estimate;
import caryatid.views.OffsetSeries;
import caryatid.views.RecordView;
import caryatid.views.StandChange;
import caryatid.views.StateChange;
import caryatid.wording.EntryWords;
import caryatid.wording.LandmarkWords;
import caryatid.wording.OffsetWords;
import caryatid.wording.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** How the offsets developed from stand to stand, and what was changed in between. */
public final class OffsetHistory {
  private final RecordView view;
  private final List<StateChange> judged;
  private final Wording wording;

  public OffsetHistory(RecordReportData data, Wording wording) {
    this.view = data.view();
    this.judged = data.judged();
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
    if (!judged.isEmpty()) {
      blocks.add(heading("JUDGED"));
      blocks.add(new Prose(wording.word("FittingReport.JUDGED_HOW"), false));
      blocks.add(judged());
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
                    judged,
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

  private Table judged() {
    List<TableColumn> columns =
        List.of(
            column("BETWEEN", 20),
            column("OFFSET", 52),
            column("WAS_IS", 46),
            column("CHANGED_BY", 34),
            column("JUDGEMENT", 38));
    List<List<String>> rows = new ArrayList<>();
    for (StateChange change : judged) {
      change.offsets().forEach(offset -> rows.add(row(change, offset)));
    }
    return new Table(columns, rows);
  }

  private List<String> row(StateChange states, OffsetChange change) {
    OffsetWords words = new OffsetWords(wording);
    LandmarkWords names = LandmarkWords.of(view, change.at().side(), wording);
    return List.of(
        states.before() + " → " + states.after(),
        String.join(
            ", ",
            wording.word(change.at().plane()),
            names.name(change.at().landmark(), change.at().side()),
            wording.word(change.of())),
        words.distance(change.at().plane(), change.beforeMm())
            + " → "
            + words.distance(change.at().plane(), change.afterMm()),
        wording.fill(
            "FittingReport.CHANGED_BY_MM",
            Argument.text(wording.signed(change.stayed().value(), Unit.MM)),
            plain(change.stayed().expanded(Estimate.COVERAGE)),
            plain(change.anew().expanded(Estimate.COVERAGE))),
        judgement(change));
  }

  private Argument plain(double mm) {
    return Argument.text(wording.plain(mm, Unit.MM));
  }

  private String judgement(OffsetChange change) {
    OptionalInt stands = change.standsToShow(Math.abs(change.stayed().value()));
    return switch (StateChange.Judgement.of(change)) {
      case REAL -> wording.word("FittingReport.REAL");
      case REAL_IF_STAYED -> wording.word("FittingReport.REAL_IF_STAYED");
      case CHANCE ->
          stands.isPresent()
              ? wording.fill("FittingReport.CHANCE_UNTIL", Argument.count(stands.getAsInt()))
              : wording.word("FittingReport.CHANCE");
    };
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
