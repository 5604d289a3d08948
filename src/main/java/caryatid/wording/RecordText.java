package caryatid.wording;

import caryatid.entry.BenchAlignment;
import caryatid.entry.Entry;
import caryatid.entry.Erasure;
import caryatid.entry.KeptFile;
import caryatid.loadline.Verdict;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.TimeText;
import caryatid.remark.Unit;
import caryatid.views.CurrentSetting;
import caryatid.views.OffsetSeries;
import caryatid.views.RecordView;
import caryatid.views.ResultOrigin;
import caryatid.views.StandWarnings;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A record as lines for a terminal. */
public final class RecordText {

  /** What people wrote must not look like a line of its own, nor act on a terminal. */
  private static final Pattern CONTROL = Pattern.compile("\\p{Cc}");

  private static final String INDENT = "      ";

  /** Shown together, stand by stand, below the timeline. */
  private static final String FINDINGS = "findings";

  private final Wording wording;
  private final LandmarkWords landmarks;
  private final EntryWords words;
  private final List<String> lines = new ArrayList<>();

  private RecordText(Wording wording, LandmarkWords landmarks) {
    this.wording = wording;
    this.landmarks = landmarks;
    this.words = new EntryWords(wording);
  }

  /** The record's lines. */
  public static List<String> lines(RecordView view, Wording wording) {
    RecordText text = new RecordText(wording, LandmarkWords.of(view, wording));
    text.say(
        "", "Record.head", view.code().text(), entries(view.newest(), wording), view.headDigest());
    text.warnings(view.warnings());
    text.remarks(view.remarks().stream().filter(RecordText::isSafety).toList());
    text.remarks(view.open().stream().filter(RecordText::isSafety).toList());
    text.open(view.open());
    text.settings(CurrentSetting.of(view.valid()));
    text.lines.add("");
    text.lines.add(wording.word("FittingReport.TIMELINE"));
    view.timeline().forEach(text::line);
    text.offsets(view.offsets(), view.warnings().kneeMayBend());
    text.remarks(view.remarks().stream().filter(r -> !isSafety(r)).toList());
    return List.copyOf(text.lines);
  }

  /** A line for each remark, led by how much it matters. */
  public static List<String> remarks(List<Remark> remarks, Wording wording) {
    RecordText text = new RecordText(wording, new LandmarkWords(wording, false));
    text.remarks(remarks);
    return List.copyOf(text.lines);
  }

  /** A line for each thing that is left open. */
  public static List<String> open(RecordView view, Wording wording) {
    LandmarkWords landmarks = LandmarkWords.of(view, wording);
    return view.open().stream().map(landmarks::say).toList();
  }

  /** What the user must know first after importing a packed record. */
  public static List<String> readMe(RecordView view, Wording wording) {
    RecordText text = new RecordText(wording, LandmarkWords.of(view, wording));
    text.say("", "ReadMe.head", view.code().text());
    text.lines.add("");
    text.warnings(view.warnings());
    text.remarks(view.remarks());
    text.remarks(view.open().stream().filter(RecordText::isSafety).toList());
    if (text.lines.size() == 2) {
      text.lines.add(wording.word("ReadMe.none"));
    }
    text.lines.add("");
    text.lines.add(wording.word("ResultText.caution"));
    return text.lines.stream().map(line -> CONTROL.matcher(line).replaceAll(" ")).toList();
  }

  /** A count of records in words. */
  public static String records(int count, Wording wording) {
    return count == 1
        ? wording.word("Record.records.ONE")
        : wording.fill("Record.records.MANY", texts(count));
  }

  /** A count of entries in words. */
  public static String entries(int count, Wording wording) {
    return count == 1
        ? wording.word("Record.entries.ONE")
        : wording.fill("Record.entries.MANY", texts(count));
  }

  /**
   * Of a record that was erased, when, by whom and why.
   *
   * @param erasure the entry that is left of it
   */
  public static String erased(String code, Entry erasure, Wording wording) {
    return wording.fill(
        "Record.wasErased",
        texts(
            code,
            TimeText.of(erasure.at()),
            erasure.by(),
            erasure.content(Erasure.class).map(Erasure::why).orElse("")));
  }

  private static boolean isSafety(Remark remark) {
    return remark.topic().isSafety();
  }

  private void warnings(StandWarnings warnings) {
    WarningWords said = new WarningWords(wording, landmarks);
    warnings.all().forEach(w -> say("", "ResultText.remark", said.lead(w), said.say(w)));
  }

  private void remarks(List<Remark> remarks) {
    for (Remark remark : remarks) {
      say("", "ResultText.remark", wording.word(remark.topic().weight()), landmarks.say(remark));
    }
  }

  /** What is dangerous leads the record and is not repeated; that nothing else is open is said. */
  private void open(List<Remark> open) {
    lines.add("");
    lines.add(wording.word("FittingReport.OPEN"));
    List<Remark> others = open.stream().filter(remark -> !isSafety(remark)).toList();
    others.forEach(remark -> lines.add("  " + landmarks.say(remark)));
    if (others.isEmpty()) {
      String key = open.isEmpty() ? "FittingReport.NONE.OPEN" : "Record.openAbove";
      lines.add("  " + wording.word(key));
    }
  }

  /** What is set now; nothing where nothing is. */
  private void settings(List<CurrentSetting> settings) {
    if (settings.isEmpty()) {
      return;
    }
    lines.add("");
    lines.add(wording.word("Record.settings"));
    for (CurrentSetting setting : settings) {
      BenchAlignment.Item row = setting.row();
      String set = wording.exact(row.set()) + " " + row.unit().code();
      say("  ", "Record.setting", words.item(row), set, setting.entry());
    }
  }

  private void line(RecordView.TimelineRow line) {
    Entry entry = line.entry();
    String corrected =
        line.correctedBy().map(n -> wording.fill("Record.corrected", texts(n))).orElse("");
    say(
        "",
        "Record.line",
        String.format(Locale.ROOT, "%4d", entry.number()),
        TimeText.of(entry.at()),
        entry.by(),
        wording.word(entry.kind()) + typed(entry.isTyped()) + corrected);
    entry.corrects().ifPresent(c -> say(INDENT, "Record.corrects", c.number(), c.why()));
    words.lines(entry.content(), FINDINGS).forEach(said -> lines.add(INDENT + said));
    entry.files().forEach(this::file);
  }

  private void file(KeptFile file) {
    say(INDENT, "Record.kept", file.name(), wording.word(key(file.is())));
  }

  private static String key(KeptFile.Role role) {
    return switch (role) {
      case RECORDING -> "Role.RECORDING";
      case DESCRIPTION -> "Role.DESCRIPTION";
      case SHEET -> "Role.SHEET";
      case EARLIER_SHEET -> "Role.EARLIER_SHEET";
      case EARLIER_STATES -> "Role.EARLIER_STATES";
      case RESULT -> "Role.RESULT";
      case REPORT -> "Role.REPORT";
      case PHOTOGRAPH -> "Role.PHOTOGRAPH";
      case OTHER -> "Role.OTHER";
    };
  }

  private void offsets(List<OffsetSeries> all, boolean kneeMayBend) {
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
          landmarks.name(series.landmark(), series.side()));
      series.measured().forEach(this::measured);
    }
    List<Verdict> now =
        all.stream()
            .flatMap(s -> s.current().stream())
            .map(OffsetSeries.Measured::verdict)
            .toList();
    new ResultWords(wording).undecided(now, kneeMayBend).ifPresent(next -> lines.add("  " + next));
  }

  private String typed(boolean typed) {
    return typed ? wording.word(ResultOrigin.TYPED) : "";
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
        new ResultWords(wording).result(m.verdict(), m.offsetMm(), m.lowestMm(), m.highestMm())
            + typed(m.typed()));
  }

  private void say(String indent, String key, Object... arguments) {
    lines.add(indent + wording.fill(key, texts(arguments)));
  }

  private static Argument[] texts(Object... arguments) {
    return Stream.of(arguments).map(a -> Argument.text(a.toString())).toArray(Argument[]::new);
  }
}
