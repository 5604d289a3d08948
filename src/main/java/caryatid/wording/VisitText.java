package caryatid.wording;

import caryatid.entry.BenchAlignment;
import caryatid.entry.Entry;
import caryatid.entry.EntryContent;
import caryatid.entry.EntryKind;
import caryatid.entry.StandSummary;
import caryatid.entry.form.Answers;
import caryatid.entry.form.ContentToAnswers;
import caryatid.remark.Argument;
import caryatid.views.LastGood;
import caryatid.views.RecordView;
import caryatid.views.SinceVisit;
import java.math.BigDecimal;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is new since a visit, and the way back to the last good setting, as lines. */
public final class VisitText {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm xxx", Locale.ROOT);

  /** What people wrote must not look like a line of its own, nor act on a terminal. */
  private static final Pattern CONTROL = Pattern.compile("\\p{Cc}");

  private static final Set<EntryKind> IN_FULL =
      EnumSet.of(EntryKind.NOTE, EntryKind.OWN_SETTING, EntryKind.ACCEPTED);

  private static final Set<String> FREE_WORDS = Set.of("note", "wearer-says");

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
   * @param view the record as it is now
   */
  public static List<String> lines(SinceVisit since, RecordView view, Wording wording) {
    VisitText text = new VisitText(wording);
    LandmarkWords landmarks = LandmarkWords.of(view, wording);
    since.asked().ifPresent(day -> text.say("Since.noVisit", day, since.day()));
    text.say(
        "Since.head", since.day(), since.last(), RecordText.entries(since.added().size(), wording));
    since.added().forEach(text::added);
    text.lines.addAll(ComparisonText.lines(since.comparison(), wording));
    since.stands().forEach(stand -> text.stand(stand, landmarks));
    text.lines.add(wording.word("FittingReport.OPEN"));
    view.open().forEach(remark -> text.lines.add("  " + landmarks.say(remark)));
    if (view.open().isEmpty()) {
      text.row("FittingReport.NONE.OPEN");
    }
    return text.lines();
  }

  private List<String> lines() {
    return lines.stream().map(line -> CONTROL.matcher(line).replaceAll(" ")).toList();
  }

  private void stand(SinceVisit.StandSince stand, LandmarkWords landmarks) {
    String footwear = footwear(stand.newest()).orElse("");
    if (stand.before().isPresent()) {
      say("Since.stand", stand.before().get().number(), stand.newest().number(), footwear);
    } else {
      say("Since.firstStand", stand.newest().number(), footwear);
    }
    ComparisonText.lines(stand.differences(), landmarks, wording)
        .forEach(line -> lines.add("  " + line));
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
    said(entry.content()).forEach(line -> lines.add("      " + line));
  }

  /** What is not compared is said in full; of the others what people wrote beside the numbers. */
  private List<String> said(EntryContent content) {
    if (IN_FULL.contains(content.kind())) {
      return words.lines(content);
    }
    Map<String, Answers.Value> said =
        new LinkedHashMap<>(ContentToAnswers.answers(content).values());
    said.keySet().retainAll(FREE_WORDS);
    return words.lines(new Answers(said));
  }

  /**
   * The way back to the last good setting.
   *
   * @param code the record's
   */
  public static List<String> lines(LastGood good, String code, Wording wording) {
    VisitText text = new VisitText(wording);
    good.changed().ifPresent(remark -> text.lines.add(wording.say(remark)));
    if (good.stand().isPresent()) {
      text.back(good, good.stand().get());
    } else {
      text.none(good, code);
    }
    String others = good.others().stream().map(text::stood).collect(Collectors.joining("; "));
    if (!others.isEmpty()) {
      text.say("Back.others", others);
    }
    return text.lines();
  }

  /**
   * The way back for a page that has fields for the torques and keeps the change itself.
   *
   * @param way to the last good setting, or, where none was good, to the last one before
   * @param good whether it is to a good one
   */
  public static List<String> forPage(LastGood way, boolean good, String code, Wording wording) {
    VisitText text = new VisitText(wording);
    way.changed().ifPresent(remark -> text.lines.add(wording.say(remark)));
    if (!good) {
      text.none(way, code);
    }
    if (way.stand().isPresent()) {
      text.say(good ? "Back.head" : "Back.before", text.stood(way.stand().get()));
      text.turns(way);
    }
    return text.lines();
  }

  private void none(LastGood good, String code) {
    if (good.footwear().isPresent()) {
      say("Back.noneIn", code, good.footwear().get());
    } else {
      say("Back.none", code);
    }
  }

  private void back(LastGood good, Entry stand) {
    say("Back.head", stood(stand));
    turns(good);
    good.fasteners().forEach(this::fastener);
    say("Back.then");
  }

  private void turns(LastGood good) {
    if (good.turns().isEmpty()) {
      say("Back.same");
    }
    good.turns().forEach(this::turn);
    good.later().forEach(row -> row("Back.later", words.item(row), amount(row)));
    good.heel().ifPresent(turn -> row("Back.heel", amount(turn.is()), amount(turn.was())));
  }

  private String stood(Entry stand) {
    String shoe = footwear(stand).map(worn -> ", " + worn).orElse("");
    return fill("Back.stand", stand.number(), WHEN.format(stand.at()) + shoe);
  }

  private static Optional<String> footwear(Entry stand) {
    return stand.content(StandSummary.class).flatMap(StandSummary::footwear).map(String::strip);
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
