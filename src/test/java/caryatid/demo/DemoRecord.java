package caryatid.demo;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.form.Answers;
import caryatid.entry.form.AnswersToContent;
import caryatid.fitting.Addition;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.fitting.StandEntry;
import caryatid.format.ResultJson;
import caryatid.geometry.Side;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.store.Store;
import caryatid.store.StoredRecord;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Invented records for tests of reports: nobody stood here. */
public final class DemoRecord {
  private static final RecordCode CODE = new RecordCode("DEMO-7");

  private final Store store;
  private OffsetDateTime at = OffsetDateTime.parse("2026-03-04T08:00:00+01:00");

  /** An open record with nothing in it but its opening. */
  public DemoRecord(Path folder) throws BadInput, StoreFailure {
    store = new Store(folder, Duration.ofSeconds(10));
    store.start(
        CODE,
        addition(
            EntryKind.OPENING,
            answers("wearer", "DEMO-7", "side", "right", "level", "transtibial"),
            Optional.empty()));
  }

  /** The record as it stands. */
  public FittingRecord read() throws BadInput, StoreFailure {
    return store.read(CODE);
  }

  /** The record and the files that it keeps. */
  public StoredRecord open() throws BadInput, StoreFailure {
    return store.open(CODE);
  }

  /** What verifying its files finds. */
  public List<Problem> damage() throws BadInput, StoreFailure {
    return store.damage(CODE);
  }

  /** Bench, a stand, a change and the next stand, a correction, something accepted. */
  public DemoRecord story() throws BadInput, StoreFailure {
    bench(0).stand(38).bench(8).stand(60);
    add(EntryKind.ACCEPTED, answers("what", "toe-out", "why", "the wearer prefers it", "stand", 5));
    correct(5, answers("changed", "line moved"), "written down wrong");
    return this;
  }

  /** As many stands, the line wandering, a change before each. */
  public DemoRecord stands(int count) throws BadInput, StoreFailure {
    for (int i = 0; i < count; i++) {
      stand(40 + 7 * i % 40);
    }
    return this;
  }

  public DemoRecord bench(int forward) throws BadInput, StoreFailure {
    Answers items =
        answers("item", "foot forward of the reference line", "set", forward, "unit", "mm");
    return add(EntryKind.BENCH_ALIGNMENT, rows("items", items));
  }

  /** A stand whose load line runs so far anterior of the origin, mm. */
  public DemoRecord stand(double anterior) throws BadInput, StoreFailure {
    Demo demo = Demo.transtibial(Side.RIGHT).line(80, anterior).notes();
    return stand(demo.resultOf(demo.state(0)));
  }

  /** A stand of a result's only state. */
  public DemoRecord stand(Result found) throws BadInput, StoreFailure {
    AlignmentState state = found.state();
    at = at.plusMinutes(20);
    Addition.Attached result =
        new Addition.Attached(
            KeptFile.Role.RESULT, NamedBytes.of(ResultJson.FILE_NAME, ResultJson.write(found)));
    Addition made = StandEntry.addition(state, "AB", List.of(result));
    store.add(CODE, new Addition(at, "AB", Optional.empty(), made.content(), made.files()));
    return this;
  }

  public DemoRecord note(String text) throws BadInput, StoreFailure {
    return add(EntryKind.NOTE, answers("text", text));
  }

  public DemoRecord add(EntryKind kind, Answers content) throws BadInput, StoreFailure {
    store.add(CODE, addition(kind, content, Optional.empty()));
    return this;
  }

  private void correct(int number, Answers content, String why) throws BadInput, StoreFailure {
    Entry wrong = read().entry(number);
    store.add(
        CODE,
        addition(
            wrong.kind(),
            content,
            Optional.of(new Entry.Correction(number, why, Optional.empty()))));
  }

  private Addition addition(EntryKind kind, Answers content, Optional<Entry.Correction> corrects) {
    at = at.plusMinutes(10);
    return new Addition(
        at, "AB", corrects, AnswersToContent.content(kind, Filled.of(kind, content)), List.of());
  }

  public static Answers rows(String key, Answers... rows) {
    return new Answers(Map.of(key, new Answers.Value.Rows(List.of(rows))));
  }

  public static Answers answers(Object... keysAndValues) {
    Map<String, Answers.Value> values = new LinkedHashMap<>();
    for (int i = 0; i < keysAndValues.length; i += 2) {
      Object value = keysAndValues[i + 1];
      values.put(
          (String) keysAndValues[i],
          value instanceof Number number
              ? new Answers.Value.Amount(new BigDecimal(number.toString()))
              : new Answers.Value.Words((String) value));
    }
    return new Answers(values);
  }
}
