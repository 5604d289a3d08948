package caryatid.report.pages;

import caryatid.entry.BenchAlignment;
import caryatid.entry.Entry;
import caryatid.remark.Argument;
import caryatid.report.pages.Block.Prose;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.TableColumn;
import caryatid.views.CurrentSetting;
import caryatid.wording.EntryWords;
import caryatid.wording.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The current setting of each alignment item, compared with its recommendation. */
final class CurrentSettingsTable {
  private final List<CurrentSetting> settings;
  private final Wording wording;

  /**
   * @param valid the entries that no other takes the place of, in order of time
   */
  CurrentSettingsTable(List<Entry> valid, Wording wording) {
    this.settings = CurrentSetting.of(valid);
    this.wording = wording;
  }

  /** The table and the remarks that belong to it; empty if nothing was set. */
  List<Block> blocks() {
    if (settings.isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(table());
    settings.stream().flatMap(s -> since(s).stream()).forEach(blocks::add);
    return blocks;
  }

  private Table table() {
    List<TableColumn> columns =
        List.of(
            column("ITEM", 48, false),
            column("SET", 15, true),
            column("RECOMMENDED", 25, true),
            new TableColumn(wording.word("FittingReport.DIFFERS"), 17, true, true),
            column("WHY", 36, false),
            column("SOURCE", 39, false),
            column("NUMBER", 10, true));
    return new Table(columns, settings.stream().map(this::row).toList());
  }

  private TableColumn column(String name, double parts, boolean numbers) {
    return new TableColumn(wording.word("FittingReport." + name), parts, numbers);
  }

  private List<String> row(CurrentSetting setting) {
    BenchAlignment.Item row = setting.row();
    return List.of(
        item(setting),
        amount(row.set(), row),
        row.recommended().map(number -> amount(number, row)).orElse("–"),
        differs(row),
        row.why().orElse("–"),
        row.source().orElse("–"),
        Integer.toString(setting.entry()));
  }

  /** By how much it is set otherwise than recommended, with its sign; empty where it is not. */
  private String differs(BenchAlignment.Item row) {
    Optional<BigDecimal> recommended = row.recommended();
    BigDecimal by = row.set().subtract(recommended.orElse(BigDecimal.ZERO));
    String sign = by.signum() > 0 ? "+" : "";
    return recommended.isEmpty() || by.signum() == 0 ? "" : sign + amount(by, row);
  }

  private String item(CurrentSetting setting) {
    return new EntryWords(wording).item(setting.row());
  }

  private String amount(BigDecimal number, BenchAlignment.Item row) {
    return wording.exact(number) + " " + row.unit().code();
  }

  /** What the wearer set may have changed an angle that the bench alignment set before. */
  private Optional<Prose> since(CurrentSetting setting) {
    return setting
        .byWearer()
        .map(
            what ->
                new Prose(
                    wording.fill(
                        "FittingReport.SET_BY_WEARER",
                        Argument.text(item(setting)),
                        Argument.count(setting.entry()),
                        Argument.text(what)),
                    false));
  }
}
