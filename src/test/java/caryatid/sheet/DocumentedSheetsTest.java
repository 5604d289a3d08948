package caryatid.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.MeasuringLine;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every YAML example in the documentation is read, and its landmarks can be placed. */
class DocumentedSheetsTest {
  private static final Pattern EXAMPLE =
      Pattern.compile("`(\\S+\\.yaml)`:\\n\\n```yaml\\n(.*?)```", Pattern.DOTALL);
  private static final Path DESCRIPTIONS = Path.of("docs/plate-description.md");
  private static final Path SHEETS = Path.of("docs/trial-sheet.md");

  private static Map<String, String> examples(Path page) throws IOException {
    Map<String, String> examples = new LinkedHashMap<>();
    Matcher matcher = EXAMPLE.matcher(Files.readString(page));
    while (matcher.find()) {
      examples.put(matcher.group(1), matcher.group(2));
    }
    return examples;
  }

  @Test
  void everyExampleHasAName() throws IOException {
    for (Path page : List.of(DESCRIPTIONS, SHEETS)) {
      assertThat(Files.readString(page).split("```yaml", -1)).hasSize(examples(page).size() + 1);
    }
  }

  @TestFactory
  Stream<DynamicTest> descriptionsAreRead() throws IOException {
    return examples(DESCRIPTIONS).entrySet().stream()
        .map(
            e ->
                DynamicTest.dynamicTest(
                    e.getKey(),
                    () -> assertThat(Sheets.description(e.getValue()).name()).isNotBlank()));
  }

  @TestFactory
  Stream<DynamicTest> sheetsAreReadAndTheirLandmarksPlaced() throws IOException {
    Map<String, String> sheets = examples(SHEETS);
    List<MeasuringLine> lines = documentedLines();
    return sheets.entrySet().stream()
        .map(
            e ->
                DynamicTest.dynamicTest(
                    e.getKey(),
                    () -> {
                      TrialSheet sheet = Sheets.sheet(e.getValue(), sheets);
                      assertThat(Landmarks.place(sheet.landmarks(), lines, Place.of(e.getKey())))
                          .hasSameSizeAs(sheet.landmarks());
                    }));
  }

  private static List<MeasuringLine> documentedLines() throws IOException {
    List<MeasuringLine> lines = new ArrayList<>();
    for (String example : examples(DESCRIPTIONS).values()) {
      try {
        lines.addAll(Sheets.description(example).lines());
      } catch (BadInput e) {
        throw new AssertionError(Sheets.said(e).toString(), e);
      }
    }
    return lines;
  }
}
