package caryatid.report.pages;

import caryatid.entry.Acceptance;
import caryatid.entry.Entry;
import caryatid.entry.EntryContent;
import caryatid.entry.EntryKind;
import caryatid.entry.form.ContentToAnswers;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Weight;
import caryatid.report.pages.Block.Blank;
import caryatid.report.pages.Block.Blanks;
import caryatid.report.pages.Block.Bullet;
import caryatid.report.pages.Block.Fact;
import caryatid.report.pages.Block.Facts;
import caryatid.report.pages.Block.Heading;
import caryatid.report.pages.Block.Points;
import caryatid.report.pages.Block.Prose;
import caryatid.report.pages.Block.Title;
import caryatid.views.RecordView;
import caryatid.views.StandWarnings;
import caryatid.views.StandWarnings.Warning;
import caryatid.wording.EntryWords;
import caryatid.wording.LandmarkWords;
import caryatid.wording.WarningWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The first page of a record's report: the current state of the fitting, what is open, and what to
 * sign.
 */
public final class RecordFirstPage {
  private final RecordView view;
  private final List<Entry> valid;
  private final StandWarnings warnings;
  private final Wording wording;

  public RecordFirstPage(RecordView view, Wording wording) {
    this.view = view;
    this.warnings = view.warnings();
    this.valid = view.valid();
    this.wording = wording;
  }

  public List<Block> blocks(String title) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Title(title));
    blocks.addAll(damage());
    blocks.addAll(unread());
    WarningWords words = new WarningWords(wording, LandmarkWords.of(view, wording));
    warnings.all().forEach(w -> blocks.add(new Prose(lead(w) + ": " + words.say(w), true)));
    blocks.addAll(points(said(Weight.SAFETY)));
    blocks.add(new Facts(facts()));
    said(Weight.NOTE).forEach(note -> blocks.add(new Prose(note.words(), false)));
    section(blocks, "NOW", new CurrentOffsetsTable(view, warnings.kneeMayBend(), wording).blocks());
    section(blocks, "BENCH", new CurrentSettingsTable(valid, wording).blocks());
    section(blocks, "COMPONENTS", new CurrentComponentsTable(valid, wording).blocks());
    section(blocks, "OPEN", points(said(Weight.IMPORTANT)));
    section(blocks, "ACCEPTED", points(accepted()));
    if (view.damage().isEmpty() && view.unread().isEmpty()) {
      blocks.addAll(signed());
    }
    blocks.add(new Prose(wording.word("FittingReport.NOT_A_DEVICE"), false));
    return blocks;
  }

  private void section(List<Block> blocks, String heading, List<? extends Block> said) {
    blocks.add(new Heading(wording.word("FittingReport." + heading)));
    blocks.addAll(said);
    if (said.isEmpty()) {
      blocks.add(new Prose(wording.word("FittingReport.NONE." + heading), false));
    }
  }

  private List<Block> damage() {
    List<Block> blocks = new ArrayList<>();
    if (!view.damage().isEmpty()) {
      blocks.add(new Prose(wording.word("FittingReport.DAMAGED"), true));
    }
    blocks.addAll(
        points(
            view.damage().stream()
                .map(problem -> new Bullet(wording.lead(Weight.SAFETY), wording.say(problem)))
                .toList()));
    return blocks;
  }

  private List<Block> unread() {
    List<Block> blocks = new ArrayList<>();
    if (!view.unread().isEmpty()) {
      blocks.add(new Prose(wording.word("FittingReport.UNREAD"), true));
    }
    blocks.addAll(
        points(
            view.unread().stream()
                .map(problem -> new Bullet(wording.lead(Weight.IMPORTANT), wording.say(problem)))
                .toList()));
    return blocks;
  }

  /**
   * The statement that is signed. A record with damaged or unreadable entries is not to be signed.
   */
  private List<Block> signed() {
    return List.of(
        new Heading(wording.word("FittingReport.VOUCHED")),
        new Prose(vouched(), false),
        new Prose(view.headDigest().replaceAll("(.{64})(?=.)", "$1 "), false),
        signature());
  }

  private static List<Points> points(List<Bullet> points) {
    return points.isEmpty() ? List.of() : List.of(new Points(points));
  }

  private List<Bullet> said(Weight weight) {
    return Stream.concat(view.remarks().stream(), view.open().stream())
        .filter(remark -> remark.topic().weight() == weight)
        .map(this::point)
        .toList();
  }

  private String lead(Warning warning) {
    return wording.lead(warning.said().remark().topic().weight());
  }

  private Bullet point(Remark remark) {
    boolean danger = remark.topic().isSafety();
    return new Bullet(
        danger ? wording.lead(Weight.SAFETY) : "", LandmarkWords.of(view, wording).say(remark));
  }

  private List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    EntryWords words = new EntryWords(wording);
    Entry first = first();
    EntryContent opening =
        valid.stream()
            .filter(e -> e.kind() == EntryKind.OPENING)
            .findFirst()
            .orElse(first)
            .content();
    ContentToAnswers.answers(opening)
        .values()
        .forEach(
            (key, value) ->
                facts.add(new Fact(Capitals.first(words.label(key)), words.value(key, value))));
    facts.add(fact("STARTED", EntryTimes.of(first)));
    facts.add(
        fact("NEWEST", EntryTimes.of(view.timeline().get(view.timeline().size() - 1).entry())));
    facts.add(fact("ENTRIES", Integer.toString(view.timeline().size())));
    facts.add(
        fact(
            "STANDS",
            Long.toString(valid.stream().filter(e -> e.kind() == EntryKind.STAND).count())));
    return facts;
  }

  /** The entry that was added first; a record may hold what was before it. */
  private Entry first() {
    return view.timeline().stream()
        .map(RecordView.TimelineRow::entry)
        .min(Comparator.comparingInt(Entry::number))
        .orElseThrow();
  }

  private Fact fact(String label, String value) {
    return new Fact(wording.word("FittingReport." + label), value);
  }

  private List<Bullet> accepted() {
    return valid.stream()
        .flatMap(
            e ->
                e.content(Acceptance.class).stream()
                    .map(accepted -> new Bullet("", accepted(accepted, e))))
        .toList();
  }

  private String accepted(Acceptance accepted, Entry entry) {
    return wording.fill(
        "FittingReport.ACCEPTED_BECAUSE",
        Argument.text(accepted.what()),
        Argument.text(accepted.why()),
        Argument.count(entry.number()),
        Argument.text(entry.by()));
  }

  private String vouched() {
    return wording.fill("FittingReport.DIGEST", Argument.count(view.newest()));
  }

  private Blanks signature() {
    return new Blanks(
        3,
        Stream.of("PRACTITIONER_CODE", "ROLE", "SIGNATURE")
            .map(label -> new Blank(wording.word("FirstPage." + label), Optional.empty()))
            .toList());
  }
}
