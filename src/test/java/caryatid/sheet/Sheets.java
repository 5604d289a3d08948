package caryatid.sheet;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.remark.BadInput;
import caryatid.wording.Wording;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Sheets and descriptions for tests (invented), and what the program says about them. */
final class Sheets {
  static final String DESCRIPTION =
      """
      plate-description: 1
      name: Level plate
      """;

  /** Twenty lines; tests add or replace some. */
  static final String SHEET =
      """
      trial-sheet: 1
      wearer: K7
      at: 2026-03-04T10:15+01:00
      side: right
      level: transtibial
      stance: {kind: prosthetic foot on plate}
      other-foot: {on: block, height-difference-mm: 0}
      hands: free
      footwear: {worn: barefoot, heel-height-mm: 0}
      landmarks:
        - name: knee centre
          forward-mm: 340
          up-mm: 492
          marking-mm: 3
      targets:
        - plane: sagittal
          landmark: knee centre
          recommended-mm: 15
          below-mm: 10
          above-mm: 10
          source: Instructions, section 5
      """;

  private static final Wording WORDING = Wording.in(Locale.ROOT);

  private Sheets() {}

  static NamedBytes file(String name, String text) {
    return NamedBytes.of(name, text.getBytes(StandardCharsets.UTF_8));
  }

  static PlateDescription description(String text) throws BadInput {
    return DescriptionReader.read(file("plate.yaml", text));
  }

  static TrialSheet sheet(String text) throws BadInput {
    return sheet(text, Map.of());
  }

  static TrialSheet sheet(String text, Map<String, String> beside) throws BadInput {
    return TrialSheetReader.read(
        file("sheet.yaml", text),
        name -> Optional.ofNullable(beside.get(name)).map(t -> file(name, t)));
  }

  static List<String> problemsOfDescription(String text) {
    return said(catchThrowableOfType(BadInput.class, () -> description(text)));
  }

  /** What is said about a description with more lines. */
  static List<String> withLines(String more) {
    return problemsOfDescription(DESCRIPTION + more);
  }

  static List<String> problemsOfSheet(String text) {
    return problemsOfSheet(text, Map.of());
  }

  static List<String> problemsOfSheet(String text, Map<String, String> beside) {
    return said(catchThrowableOfType(BadInput.class, () -> sheet(text, beside)));
  }

  /** What is said about the sheet after a part of it, which must stand in it, was replaced. */
  static List<String> replacing(String part, String by) {
    return problemsOfSheet(replaced(part, by));
  }

  static String replaced(String part, String by) {
    if (!SHEET.contains(part)) {
      throw new IllegalArgumentException("not in the sheet: " + part);
    }
    return SHEET.replace(part, by);
  }

  static List<String> said(BadInput bad) {
    return Stream.ofNullable(bad).flatMap(b -> b.problems().stream()).map(WORDING::say).toList();
  }
}
