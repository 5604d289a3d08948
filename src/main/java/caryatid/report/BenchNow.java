package caryatid.report;

import caryatid.entry.BenchItem;
import caryatid.entry.Entry;
import caryatid.entry.form.Answers;
import caryatid.fitting.SettingNow;
import caryatid.remark.Argument;
import caryatid.report.Block.Column;
import caryatid.report.Block.Prose;
import caryatid.report.Block.Table;
import caryatid.wording.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** To what each item of the alignment is set now, against what was recommended for it. */
final class BenchNow {
  private static final List<String> LANGUAGES = List.of("en", "de", "fr", "es");

  private final List<SettingNow> settings;
  private final Wording wording;

  /**
   * @param valid the entries that no other takes the place of, in order of time
   */
  BenchNow(List<Entry> valid, Wording wording) {
    this.settings = SettingNow.of(valid, heelHeight(wording));
    this.wording = wording;
  }

  /** An item keeps the words of whoever noted it, in whatever language. */
  private static List<String> heelHeight(Wording wording) {
    return Stream.concat(
            Stream.of(wording), LANGUAGES.stream().map(Locale::forLanguageTag).map(Wording::in))
        .map(w -> w.word(BenchItem.HEEL_HEIGHT))
        .distinct()
        .toList();
  }

  /** The table, and what must be said with it; empty where nothing was set. */
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
    List<Column> columns =
        List.of(
            column("ITEM", 46, false),
            column("SET", 17, true),
            column("RECOMMENDED", 25, true),
            new Column(wording.word("FittingReport.DIFFERS"), 22, true, true),
            column("SOURCE", 67, false),
            column("NUMBER", 13, true));
    return new Table(columns, settings.stream().map(this::row).toList());
  }

  private Column column(String name, double parts, boolean numbers) {
    return new Column(wording.word("FittingReport." + name), parts, numbers);
  }

  private List<String> row(SettingNow setting) {
    Answers row = setting.row();
    return List.of(
        setting.item(),
        amount(row, "set").orElseThrow(),
        amount(row, "recommended").orElse("–"),
        differs(row),
        row.words("source").orElse("–"),
        Integer.toString(setting.entry()));
  }

  /** By how much it is set otherwise than recommended, with its sign; empty where it is not. */
  private String differs(Answers row) {
    Optional<BigDecimal> recommended = row.number("recommended");
    BigDecimal by = row.number("set").orElseThrow().subtract(recommended.orElse(BigDecimal.ZERO));
    String sign = by.signum() > 0 ? "+" : "";
    return recommended.isEmpty() || by.signum() == 0
        ? ""
        : sign + wording.exact(by) + " " + row.words("unit").orElseThrow();
  }

  private Optional<String> amount(Answers row, String key) {
    String unit = row.words("unit").orElseThrow();
    return row.number(key).map(number -> wording.exact(number) + " " + unit);
  }

  /** What the wearer set may have changed an angle that the bench alignment set before. */
  private Optional<Prose> since(SettingNow setting) {
    return setting
        .byWearer()
        .map(
            what ->
                new Prose(
                    wording.fill(
                        "FittingReport.SET_BY_WEARER",
                        Argument.text(setting.item()),
                        Argument.count(setting.entry()),
                        Argument.text(what)),
                    false));
  }
}
