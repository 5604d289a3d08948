package caryatid.usecase.stand;

import static java.util.Locale.ROOT;

import caryatid.entry.BenchAlignment;
import caryatid.entry.BenchItem;
import caryatid.entry.Entry;
import caryatid.entry.SettingDirection;
import caryatid.entry.form.Answers;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.geometry.Side;
import caryatid.remark.BadInput;
import caryatid.usecase.Records;
import caryatid.usecase.SuggestedRows;
import caryatid.views.CurrentSetting;
import caryatid.views.LastGood;
import caryatid.wording.EntryWords;
import caryatid.wording.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A change of alignment as one step: what is set otherwise, and to what torque each fastener is
 * secured after it. Both become rows of one entry about the bench alignment.
 */
public final class AlignmentChange {
  private final List<BenchAlignment.Item> settings;
  private final SuggestedRows usual;
  private final Wording wording;

  private AlignmentChange(
      List<BenchAlignment.Item> settings, SuggestedRows usual, Wording wording) {
    this.settings = settings;
    this.usual = usual;
    this.wording = wording;
  }

  /**
   * What can be changed.
   *
   * @param item in the reader's language
   * @param fastener which fastener, where it is one
   * @param side on which leg; empty in a record of one leg
   * @param unit its code
   * @param now what it is set to; empty where the record does not say
   * @param recommended what is recommended, where the record says it
   * @param directions in which it can be changed: first the one in which its number rises
   */
  public record Changeable(
      String item,
      Optional<String> fastener,
      Optional<Side> side,
      String unit,
      Optional<BigDecimal> now,
      Optional<BigDecimal> recommended,
      List<SettingDirection> directions) {
    public Changeable {
      directions = List.copyOf(directions);
    }
  }

  /** Where a step back leads, and whether every tolerance was met there. */
  public record WayBack(LastGood to, boolean good) {}

  /**
   * What a record says is set.
   *
   * @param valid its entries that no other takes the place of
   * @param usual the usual items of the bench
   */
  public static AlignmentChange of(List<Entry> valid, SuggestedRows usual, Wording wording) {
    return new AlignmentChange(
        CurrentSetting.of(valid).stream().map(CurrentSetting::row).toList(), usual, wording);
  }

  /**
   * The way back to the last good setting in the footwear of the newest stand; where none was good,
   * to the last one that was another than the present.
   *
   * @throws BadInput if there is no such record, or it is damaged
   */
  public static WayBack back(Records records, String code) throws BadInput {
    FittingRecord record = records.store().read(RecordCode.of(code));
    if (!record.notShown().isEmpty()) {
      throw new BadInput(record.notShown());
    }
    LastGood good = LastGood.of(record, Optional.empty());
    Optional<LastGood> before =
        good.stand().isPresent() ? Optional.empty() : LastGood.before(record);
    return new WayBack(before.orElse(good), good.stand().isPresent());
  }

  /** What is set and can be changed, then the usual items of which the record says nothing. */
  public List<Changeable> offered() {
    List<Changeable> offered = new ArrayList<>();
    settings.stream().filter(row -> !row.isTorque()).map(this::changeable).forEach(offered::add);
    for (Map<String, String> row : usual.words()) {
      boolean torque = "N m".equals(row.get("unit"));
      if (!torque && offered.stream().noneMatch(one -> one.item().equals(row.get("item")))) {
        offered.add(
            new Changeable(
                row.get("item"),
                Optional.empty(),
                Optional.empty(),
                row.get("unit"),
                Optional.empty(),
                Optional.empty(),
                SettingDirection.of(code(row.get("item")))));
      }
    }
    return List.copyOf(offered);
  }

  private Changeable changeable(BenchAlignment.Item row) {
    String item = new EntryWords(wording).name("item", row.item());
    return new Changeable(
        item,
        row.fastener(),
        row.side(),
        row.unit().code(),
        Optional.of(row.set()),
        row.recommended(),
        SettingDirection.of(row.item().code()));
  }

  private Optional<BenchItem> code(String item) {
    return usual
        .named(item)
        .flatMap(row -> row.name("item"))
        .flatMap(Answers.Value.Name::code)
        .map(BenchItem.class::cast);
  }

  /** The fasteners that the record names; {@code now} is what each is to be secured to. */
  public List<Changeable> fasteners() {
    return settings.stream()
        .filter(BenchAlignment.Item::isTorque)
        .map(
            row ->
                new Changeable(
                    new EntryWords(wording).name("item", row.item()),
                    row.fastener(),
                    row.side(),
                    row.unit().code(),
                    row.recommended().or(() -> Optional.of(row.set())),
                    row.recommended(),
                    SettingDirection.of(row.item().code())))
        .toList();
  }

  /** What is set otherwise on a way back. */
  public List<Changeable> turns(LastGood way) {
    return way.turns().stream().map(turn -> changeable(turn.was())).toList();
  }

  /**
   * Adds a row to the fields of the entry.
   *
   * @param number the row's, from 1
   * @param set what it is set to, as it was typed; a row that is left empty is not added
   */
  public static void row(Map<String, String> fields, int number, Changeable what, String set) {
    if (set.isBlank()) {
      return;
    }
    String lead = lead(number);
    fields.put(lead + "item", what.item());
    what.fastener().ifPresent(name -> fields.put(lead + "fastener", name));
    what.side().ifPresent(side -> fields.put(lead + "side", side.lastPart().toLowerCase(ROOT)));
    what.recommended().ifPresent(r -> fields.put(lead + "recommended", r.toPlainString()));
    fields.put(lead + "set", set);
    fields.put(lead + "unit", what.unit());
  }

  /** How the names of a row's fields begin. */
  public static String lead(int number) {
    return "items[" + number + "].";
  }

  /** A step back in words: what, to. */
  public static String to(Changeable what, String to) {
    return what.item() + " \u2192 " + to + " " + what.unit();
  }

  /** A change in words: what, from, to. */
  public static String said(Changeable what, String to, Wording wording) {
    String from = what.now().map(wording::exact).orElse("?");
    return what.item() + ": " + from + " \u2192 " + to + " " + what.unit();
  }
}
