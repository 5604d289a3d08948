package caryatid.demo;

import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.form.Answers;
import caryatid.entry.form.AnswersToContent;
import caryatid.fitting.Addition;
import caryatid.fitting.RecordCode;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.Place;
import caryatid.sheet.yaml.InputValue;
import caryatid.store.Store;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Invented entries for tests. */
public final class Invented {
  public static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-04T10:15:00+01:00");
  public static final RecordCode CODE = new RecordCode("K7-right");

  private Invented() {}

  public static Store store(Path folder) {
    return new Store(folder, Duration.ofSeconds(60));
  }

  public static Answers answers(Object... keysAndValues) {
    Map<String, Answers.Value> values = new LinkedHashMap<>();
    for (int i = 0; i < keysAndValues.length; i += 2) {
      values.put((String) keysAndValues[i], value(keysAndValues[i + 1]));
    }
    return new Answers(values);
  }

  private static Answers.Value value(Object value) {
    if (value instanceof Number number) {
      return new Answers.Value.Amount(new BigDecimal(number.toString()));
    }
    if (value instanceof Boolean yes) {
      return new Answers.Value.YesNo(yes);
    }
    if (value instanceof Answers row) {
      return new Answers.Value.Rows(List.of(row));
    }
    return new Answers.Value.Words((String) value);
  }

  public static Addition opening() {
    return addition(
        EntryKind.OPENING, answers("wearer", "K7", "side", "right", "level", "transtibial"));
  }

  public static Addition note(String text) {
    return addition(EntryKind.NOTE, answers("text", text));
  }

  public static Addition addition(EntryKind kind, Answers content) {
    return new Addition(
        AT,
        "AB",
        Optional.empty(),
        AnswersToContent.content(kind, Filled.of(kind, content)),
        List.of());
  }

  /** What a stand found at the knee centre: inside, too close to call. */
  public static Answers found(double mm) {
    return answers(
        "footwear",
        "barefoot",
        "findings",
        answers(
            "plane",
            "sagittal",
            "side",
            "right",
            "landmark",
            "knee centre",
            "offset-mm",
            mm,
            "expanded-mm",
            18,
            "recommended-mm",
            20,
            "below-mm",
            15,
            "above-mm",
            15,
            "result",
            "inside too close",
            "source",
            "instructions (invented)"));
  }

  /** A stand with a recording of as many rows at 100 Hz, another one for each seed. */
  public static Addition stand(long seed, int rows) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder("Time,Fz,CoPx,CoPy\n");
    for (int i = 0; i < rows; i++) {
      text.append(
          String.format(
              Locale.ROOT,
              "%.2f,%.3f,%.4f,%.4f%n",
              i * 0.01,
              400 + random.nextGaussian(),
              random.nextGaussian(),
              random.nextGaussian()));
    }
    return new Addition(
        AT,
        "AB",
        Optional.empty(),
        AnswersToContent.content(EntryKind.STAND, answers("changed", "stand " + seed)),
        List.of(
            attached(KeptFile.Role.RECORDING, "walk.csv", text.toString()),
            attached(KeptFile.Role.DESCRIPTION, "plate.yaml", "plate-description: 1\n"),
            attached(KeptFile.Role.SHEET, "sheet.yaml", "trial-sheet: 1 # " + seed + "\n"),
            attached(KeptFile.Role.RESULT, "result.json", "{\"seed\": " + seed + "}\n"),
            attached(KeptFile.Role.REPORT, "report.pdf", "%PDF " + seed + "\n")));
  }

  public static Addition.Attached attached(KeptFile.Role is, String name, String text) {
    return new Addition.Attached(is, NamedBytes.of(name, text.getBytes(StandardCharsets.UTF_8)));
  }

  public static InputValue.Group given(Map<String, InputValue> members) {
    return new InputValue.Group(members, Place.of("test"));
  }
}
