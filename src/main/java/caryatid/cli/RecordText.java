package caryatid.cli;

import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.fitting.AdditionRemarks;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.LostEntry;
import caryatid.fitting.OffsetSeries;
import caryatid.fitting.RecordCode;
import caryatid.fitting.RecordView;
import caryatid.fitting.Store;
import caryatid.remark.BadInput;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.remark.Weight;
import caryatid.wording.EntryWords;
import caryatid.wording.ResultWords;
import caryatid.wording.Wording;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A record as lines for a terminal. */
final class RecordText {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm xxx", Locale.ROOT);
  private static final String INDENT = "      ";

  /** Shown together, stand by stand, below the timeline. */
  private static final String FINDINGS = "findings";

  private final Wording wording;
  private final EntryWords words;
  private final List<String> lines = new ArrayList<>();

  private RecordText(Wording wording) {
    this.wording = wording;
    this.words = new EntryWords(wording);
  }

  static List<String> lines(FittingRecord record, Wording wording) {
    RecordView view = RecordView.of(record);
    RecordText text = new RecordText(wording);
    text.say(
        "", "Record.head", view.code().text(), entries(record.size(), wording), view.headDigest());
    text.remarks(view.remarks().stream().filter(RecordText::isSafety).toList());
    view.timeline().forEach(text::line);
    text.offsets(view.offsets());
    text.open(view.open());
    text.remarks(view.remarks().stream().filter(r -> !isSafety(r)).toList());
    return text.shown();
  }

  /**
   * What somebody who has just added an entry must know: its place in the record, makers' limits,
   * and dangers left open.
   */
  static List<String> warnings(FittingRecord record, Entry added, Wording wording) {
    RecordText text = new RecordText(wording);
    RecordView view = RecordView.of(record);
    text.remarks(AdditionRemarks.of(record, added));
    text.remarks(view.remarks());
    text.remarks(view.open().stream().filter(RecordText::isSafety).toList());
    return text.shown();
  }

  /** A count of entries in words. */
  static String entries(int count, Wording wording) {
    return count == 1
        ? wording.word("Record.entries.ONE")
        : wording.fill("Record.entries.MANY", RecordPart.texts(count));
  }

  /** Of a record that was erased, when, by whom and why. */
  static Optional<String> erased(Store store, RecordCode code, Wording wording) throws BadInput {
    return store
        .stone(code)
        .map(
            stone ->
                wording.fill(
                    "Record.wasErased",
                    RecordPart.texts(
                        code.text(),
                        WHEN.format(stone.at()),
                        stone.by(),
                        stone.content().words("why").orElse(""))))
        .map(Shown::line);
  }

  /** Which entries of a record cannot be read. */
  static List<String> lost(FittingRecord record, Wording wording) {
    RecordText text = new RecordText(wording);
    text.remarks(LostEntry.of(record));
    return text.shown();
  }

  private List<String> shown() {
    return lines.stream().map(Shown::line).toList();
  }

  private static boolean isSafety(Remark remark) {
    return remark.topic().weight() == Weight.SAFETY;
  }

  private void remarks(List<Remark> remarks) {
    for (Remark remark : remarks) {
      say("", "ResultText.remark", wording.word(remark.topic().weight()), wording.say(remark));
    }
  }

  private void open(List<Remark> open) {
    if (!open.isEmpty()) {
      lines.add("");
      lines.add(wording.word("FittingReport.OPEN"));
    }
    open.forEach(remark -> lines.add("  " + wording.say(remark)));
  }

  private void line(RecordView.Line line) {
    Entry entry = line.entry();
    String corrected =
        line.correctedBy()
            .map(n -> wording.fill("Record.corrected", RecordPart.texts(n)))
            .orElse("");
    say(
        "",
        "Record.line",
        String.format(Locale.ROOT, "%4d", entry.number()),
        WHEN.format(entry.at()),
        entry.by(),
        wording.word(entry.kind()) + corrected);
    entry.corrects().ifPresent(c -> say(INDENT, "Record.corrects", c.number(), c.why()));
    words.lines(entry.content(), FINDINGS).forEach(said -> lines.add(INDENT + said));
    entry.files().forEach(this::file);
  }

  private void file(KeptFile file) {
    say(INDENT, "Record.kept", file.name(), wording.word("Role." + file.is().name()));
  }

  private void offsets(List<OffsetSeries> all) {
    if (!all.isEmpty()) {
      lines.add("");
      say("", "Record.offsets");
    }
    for (OffsetSeries series : all) {
      say(
          "  ",
          "Record.series",
          wording.word(series.plane()),
          wording.word(series.side()),
          series.landmark());
      series.measured().forEach(this::measured);
    }
  }

  private void measured(OffsetSeries.Measured m) {
    say(
        "    ",
        "Record.measured",
        m.entry(),
        wording.signed(m.offsetMm(), Unit.MM),
        wording.number(m.expandedMm(), Unit.MM),
        wording.signed(m.recommendedMm(), Unit.MM),
        wording.signed(m.lowestMm(), Unit.MM),
        wording.signed(m.highestMm(), Unit.MM),
        new ResultWords(wording)
            .result(m.verdict(), m.offsetMm(), m.lowestMm(), m.highestMm()));
  }

  private void say(String indent, String key, Object... arguments) {
    lines.add(indent + wording.fill(key, RecordPart.texts(arguments)));
  }
}
