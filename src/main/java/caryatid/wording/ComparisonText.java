package caryatid.wording;

import caryatid.entry.form.Answers;
import caryatid.remark.Argument;
import caryatid.views.Comparison;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What differs between two states of a record as lines for a terminal. */
public final class ComparisonText {
  private static final String LANDMARK = "landmark";

  private final LandmarkWords landmarks;
  private final Wording wording;
  private final EntryWords words;

  private ComparisonText(LandmarkWords landmarks, Wording wording) {
    this.landmarks = landmarks;
    this.wording = wording;
    this.words = new EntryWords(wording);
  }

  /** The comparison's lines: a head, and a line for each difference in digits that are shown. */
  public static List<String> lines(Comparison comparison, Wording wording) {
    LandmarkWords landmarks = new LandmarkWords(wording, comparison.prostheticKnee());
    List<String> differences = lines(comparison.differences(), landmarks, wording);
    List<String> lines = new ArrayList<>();
    lines.add(
        wording.fill(
            differences.isEmpty() ? "Record.same" : "Record.differs",
            Argument.text(Integer.toString(comparison.from())),
            Argument.text(Integer.toString(comparison.to()))));
    lines.addAll(differences);
    return List.copyOf(lines);
  }

  /** A line for each difference in digits that are shown. */
  static List<String> lines(
      List<Comparison.Difference> differences, LandmarkWords landmarks, Wording wording) {
    ComparisonText text = new ComparisonText(landmarks, wording);
    return differences.stream().flatMap(d -> text.line(d).stream()).distinct().toList();
  }

  private Optional<String> line(Comparison.Difference difference) {
    String before = text(difference, difference.before());
    String after = text(difference, difference.after());
    String row = difference.row().map(r -> ", " + row(r)).orElse("");
    String what = wording.word(difference.kind()) + row + ", " + words.label(difference.field());
    return before.equals(after)
        ? Optional.empty()
        : Optional.of(
            wording.fill(
                "Record.difference",
                Argument.text(what),
                Argument.text(before),
                Argument.text(after)));
  }

  /** Several rows of one name are numbered from the second on. */
  private String row(Comparison.Row row) {
    String about = about(row.about());
    return row.count() == 1 ? about : about + " (" + row.count() + ")";
  }

  private String about(Answers row) {
    return row.values().entrySet().stream()
        .map(part -> named(part.getKey(), words.value(part.getKey(), part.getValue())))
        .collect(Collectors.joining(", "));
  }

  private String named(String key, String value) {
    return key.equals(LANDMARK) ? landmarks.name(value) : value;
  }

  private String text(Comparison.Difference difference, Optional<Answers.Value> value) {
    boolean number = value.filter(Answers.Value.Amount.class::isInstance).isPresent();
    String unit = number ? difference.unit().map(u -> " " + u).orElse("") : "";
    return value
        .map(
            v ->
                v instanceof Answers.Value.Rows rows
                    ? about(rows.rows().get(0))
                    : words.value(difference.field(), v) + unit)
        .orElse(wording.word("Record.nothing"));
  }
}
