package caryatid.cli;

import caryatid.fitting.Answers;
import caryatid.fitting.Entry;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.KeptFile;
import caryatid.fitting.OffsetSeries;
import caryatid.fitting.RecordView;
import caryatid.remark.Unit;
import caryatid.wording.Wording;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A record as lines for a terminal. */
final class RecordText {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm xxx", Locale.ROOT);
  private static final String INDENT = "      ";

  /** Shown together, stand by stand, below the timeline. */
  private static final String FINDINGS = "findings";

  private final Wording wording;
  private final List<String> lines = new ArrayList<>();

  private RecordText(Wording wording) {
    this.wording = wording;
  }

  static List<String> lines(FittingRecord record, Wording wording) {
    RecordView view = RecordView.of(record);
    RecordText text = new RecordText(wording);
    text.say("", "Record.head", view.code().text(), record.size(), view.headDigest());
    view.timeline().forEach(text::line);
    text.offsets(view.offsets());
    text.lines.addAll(remarks(record, wording));
    return List.copyOf(text.lines);
  }

  /** What is outside a maker's limit. */
  static List<String> remarks(FittingRecord record, Wording wording) {
    RecordText text = new RecordText(wording);
    RecordView.of(record)
        .remarks()
        .forEach(
            r ->
                text.say(
                    "", "ResultText.remark", wording.word(r.topic().weight()), wording.say(r)));
    return text.lines;
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
    answers(INDENT, entry.content());
    entry.files().forEach(this::file);
  }

  private void answers(String indent, Answers answers) {
    for (Map.Entry<String, Answers.Value> answer : answers.values().entrySet()) {
      if (answer.getKey().equals(FINDINGS)) {
        continue;
      }
      if (answer.getValue() instanceof Answers.Value.Rows rows) {
        rows.rows().forEach(row -> lines.add(indent + row(row)));
      } else {
        String value = FieldText.value(answer.getKey(), answer.getValue(), wording);
        say(indent, "Record.field", FieldText.label(answer.getKey(), wording), value);
      }
    }
  }

  /** The row's own words first; a unit that has a field of its own stands behind its numbers. */
  private String row(Answers row) {
    String unit = row.words("unit").map(u -> " " + u).orElse("");
    List<String> parts = new ArrayList<>();
    row.values()
        .forEach(
            (key, value) -> {
              if (!key.equals("unit")) {
                String text = FieldText.value(key, value, wording);
                String number = value instanceof Answers.Value.Amount ? text + unit : text;
                parts.add(parts.isEmpty() ? number : FieldText.label(key, wording) + " " + number);
              }
            });
    return String.join("; ", parts);
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
        wording.word(m.verdict()));
  }

  private void say(String indent, String key, Object... arguments) {
    lines.add(indent + wording.fill(key, RecordPart.texts(arguments)));
  }
}
