package caryatid.report;

import caryatid.fitting.Answers;
import caryatid.fitting.Entry;
import caryatid.fitting.EntryKind;
import caryatid.fitting.OffsetSeries;
import caryatid.fitting.RecordView;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.remark.Weight;
import caryatid.report.Block.Blank;
import caryatid.report.Block.Blanks;
import caryatid.report.Block.Column;
import caryatid.report.Block.Fact;
import caryatid.report.Block.Facts;
import caryatid.report.Block.Heading;
import caryatid.report.Block.Point;
import caryatid.report.Block.Points;
import caryatid.report.Block.Prose;
import caryatid.report.Block.Table;
import caryatid.report.Block.Title;
import caryatid.wording.EntryWords;
import caryatid.wording.OffsetWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A record's first page: how the fitting stands now, what is open, what is to be signed. */
final class FittingNow {
  private final RecordView view;
  private final List<Entry> valid;
  private final Wording wording;

  FittingNow(RecordView view, Wording wording) {
    this.view = view;
    this.valid =
        view.timeline().stream()
            .filter(line -> line.correctedBy().isEmpty())
            .map(RecordView.Line::entry)
            .toList();
    this.wording = wording;
  }

  List<Block> blocks(String title) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Title(title));
    damage().ifPresent(blocks::add);
    points(said(Weight.SAFETY)).ifPresent(blocks::add);
    blocks.add(new Facts(facts()));
    section(blocks, "NOW", now());
    section(blocks, "BENCH", new BenchNow(valid, wording).table());
    section(blocks, "OPEN", points(said(Weight.IMPORTANT)));
    section(blocks, "ACCEPTED", points(accepted()));
    blocks.add(new Heading(wording.word("FittingReport.VOUCHED")));
    blocks.add(new Prose(vouched(), false));
    blocks.add(new Prose(view.headDigest().replaceAll("(.{64})(?=.)", "$1 "), false));
    blocks.add(signature());
    blocks.add(new Prose(wording.word("FittingReport.NOT_A_DEVICE"), false));
    return blocks;
  }

  private void section(List<Block> blocks, String heading, Optional<? extends Block> block) {
    blocks.add(new Heading(wording.word("FittingReport." + heading)));
    blocks.add(
        block.isPresent()
            ? block.get()
            : new Prose(wording.word("FittingReport.NONE." + heading), false));
  }

  private Optional<Points> damage() {
    return points(
        view.damage().stream()
            .map(problem -> new Point(wording.word(Weight.SAFETY), wording.say(problem)))
            .toList());
  }

  private static Optional<Points> points(List<Point> points) {
    return points.isEmpty() ? Optional.empty() : Optional.of(new Points(points));
  }

  private List<Point> said(Weight weight) {
    return Stream.concat(view.remarks().stream(), view.open().stream())
        .filter(remark -> remark.topic().weight() == weight)
        .map(this::point)
        .toList();
  }

  private Point point(Remark remark) {
    boolean danger = remark.topic().weight() == Weight.SAFETY;
    return new Point(danger ? wording.word(Weight.SAFETY) : "", wording.say(remark));
  }

  private List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    EntryWords words = new EntryWords(wording);
    Entry first = view.timeline().get(0).entry();
    valid.stream()
        .filter(e -> e.kind() == EntryKind.OPENING)
        .findFirst()
        .orElse(first)
        .content()
        .values()
        .forEach(
            (key, value) ->
                facts.add(new Fact(Capital.first(words.label(key)), words.value(key, value))));
    facts.add(fact("STARTED", When.of(first)));
    facts.add(fact("NEWEST", When.of(view.timeline().get(view.timeline().size() - 1).entry())));
    facts.add(fact("ENTRIES", Integer.toString(view.timeline().size())));
    facts.add(
        fact(
            "STANDS",
            Long.toString(valid.stream().filter(e -> e.kind() == EntryKind.STAND).count())));
    return facts;
  }

  private Fact fact(String label, String value) {
    return new Fact(wording.word("FittingReport." + label), value);
  }

  private Optional<Table> now() {
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
        ? Optional.empty()
        : Optional.of(new Table(columns, view.offsets().stream().map(this::row).toList()));
  }

  private Column column(String key, double parts, boolean numbers) {
    return new Column(wording.word(key), parts, numbers);
  }

  private List<String> row(OffsetSeries series) {
    OffsetSeries.Measured now = series.current();
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
        stand(now.entry()));
  }

  private String stand(int number) {
    Optional<String> shoe =
        valid.stream()
            .filter(e -> e.number() == number)
            .flatMap(e -> e.content().words("footwear").stream())
            .findFirst();
    return number + shoe.map(s -> ", " + s).orElse("");
  }

  private List<Point> accepted() {
    return valid.stream()
        .filter(e -> e.kind() == EntryKind.ACCEPTED)
        .map(e -> new Point("", accepted(e.content(), e)))
        .toList();
  }

  private String accepted(Answers content, Entry entry) {
    return wording.fill(
        "FittingReport.ACCEPTED_BECAUSE",
        Argument.text(content.words("what").orElseThrow()),
        Argument.text(content.words("why").orElseThrow()),
        Argument.count(entry.number()),
        Argument.text(entry.by()));
  }

  private String vouched() {
    return wording.fill(
        "FittingReport.DIGEST",
        Argument.count(view.timeline().get(view.timeline().size() - 1).entry().number()));
  }

  private Blanks signature() {
    return new Blanks(
        3,
        Stream.of("PRACTITIONER_CODE", "ROLE", "SIGNATURE")
            .map(label -> new Blank(wording.word("FirstPage." + label), Optional.empty()))
            .toList());
  }
}
