package caryatid.wording;

import caryatid.entry.BenchAlignment;
import caryatid.entry.Entry;
import caryatid.entry.StandSummary;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.views.LastGood;
import caryatid.views.SinceVisit;
import java.math.BigDecimal;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What is new since a visit, and the way back to the last good setting, as lines. */
public final class VisitText {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm xxx", Locale.ROOT);

  private final Wording wording;
  private final EntryWords words;
  private final List<String> lines = new ArrayList<>();

  private VisitText(Wording wording) {
    this.wording = wording;
    this.words = new EntryWords(wording);
  }

  /**
   * What is new since a visit.
   *
   * @param open what is open now
   */
  public static List<String> lines(SinceVisit since, List<Remark> open, Wording wording) {
    VisitText text = new VisitText(wording);
    text.say(
        "Since.head", since.day(), since.last(), RecordText.entries(since.added().size(), wording));
    since.added().forEach(text::added);
    text.lines.addAll(ComparisonText.lines(since.comparison(), wording));
    if (!open.isEmpty()) {
      text.lines.add(wording.word("FittingReport.OPEN"));
      open.forEach(remark -> text.lines.add("  " + wording.say(remark)));
    }
    return List.copyOf(text.lines);
  }

  private void added(Entry entry) {
    String corrects =
        entry.corrects().map(c -> fill("Since.corrects", c.number(), c.why())).orElse("");
    row(
        "Since.entry",
        entry.number(),
        WHEN.format(entry.at()),
        entry.by(),
        wording.word(entry.kind()) + corrects);
  }

  /** The way back to the last good setting. */
  public static List<String> lines(LastGood good, Wording wording) {
    VisitText text = new VisitText(wording);
    Entry stand = good.stand();
    String shoe =
        stand
            .content(StandSummary.class)
            .flatMap(StandSummary::footwear)
            .map(worn -> ", " + worn)
            .orElse("");
    text.say("Back.head", stand.number(), WHEN.format(stand.at()) + shoe);
    if (good.turns().isEmpty()) {
      text.say("Back.same");
    }
    good.turns().forEach(text::turn);
    good.later().forEach(row -> text.row("Back.later", text.words.item(row), text.amount(row)));
    good.fasteners().forEach(text::fastener);
    text.say("Back.then");
    return List.copyOf(text.lines);
  }

  private void turn(LastGood.Turn turn) {
    boolean comparable = turn.is().unit() == turn.was().unit();
    BigDecimal by = turn.was().set().subtract(turn.is().set());
    String sign = by.signum() > 0 ? "+" : "";
    row(
        comparable ? "Back.turn" : "Back.otherUnit",
        words.item(turn.is()),
        amount(turn.is()),
        amount(turn.was()),
        sign + wording.exact(by) + " " + turn.was().unit().code());
  }

  private void fastener(BenchAlignment.Item row) {
    BigDecimal torque = row.recommended().orElse(row.set());
    row("Back.fastener", words.item(row), wording.exact(torque) + " " + row.unit().code());
  }

  private String amount(BenchAlignment.Item row) {
    return wording.exact(row.set()) + " " + row.unit().code();
  }

  private void say(String key, Object... arguments) {
    lines.add(fill(key, arguments));
  }

  private void row(String key, Object... arguments) {
    lines.add("  " + fill(key, arguments));
  }

  private String fill(String key, Object... arguments) {
    return wording.fill(
        key, Stream.of(arguments).map(a -> Argument.text(a.toString())).toArray(Argument[]::new));
  }
}
