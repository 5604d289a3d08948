package caryatid.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.usecase.RememberedPlates;
import caryatid.usecase.file.LocalFiles;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Those of the thirty slips that {@link SlipsInWindowTest} leaves: with two plates (4, 5), with
 * what was measured for the stand before (12, 13), and those for which the window has no field (2,
 * 3, 15, 20).
 */
class SlipsOfTwoPlatesTest {
  private static final Path SAMPLES = Path.of("sample-recordings");
  private static final Pattern NAME = Pattern.compile(" name=\"([^\"]+)\"");

  @TempDir Path folder;
  private OpenWindow window;

  @BeforeEach
  void open() throws Exception {
    know("k7/barefoot-1.csv", "k7/plate.yaml");
    know("m4/barefoot.txt", "m4/plates.yaml");
    window = new OpenWindow(folder);
  }

  private void know(String export, String description) throws Exception {
    LocalFiles files = new LocalFiles();
    RememberedPlates.remember(
        OpenWindow.setting(folder).records(),
        files.read(SAMPLES.resolve(export)),
        files.read(SAMPLES.resolve(description)),
        false);
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private static String sample(String name) throws IOException {
    return Files.readString(SAMPLES.resolve(name));
  }

  /** The page with a counted recording. */
  private String counted(TypedStand stand, Map<String, String> fields, String name, String export)
      throws Exception {
    stand.typeAs(fields, "part", "live");
    stand.upload(name, export.getBytes(UTF_8));
    stand.typeAs(fields, "action", "count-1");
    return page(stand);
  }

  private String page(TypedStand stand) throws Exception {
    return window.page(stand.base() + TypedStand.STEP);
  }

  private TypedStand k7() throws Exception {
    return new TypedStand(window, window.start("K7-right", "right"));
  }

  /** The sample with two plates, transfemoral. */
  private TypedStand m4() throws Exception {
    HttpResponse<String> started =
        window.send(
            "/new",
            "record-code",
            "M4-left",
            "wearer",
            "M4",
            "side",
            "left",
            "level",
            "transfemoral",
            "by-initials",
            "AB");
    String first = started.headers().firstValue("Location").orElseThrow();
    return new TypedStand(window, first.replaceAll("/[^/]*$", ""));
  }

  private static Map<String, String> twoPlates(String left, String right) {
    Map<String, String> typed = new TreeMap<>();
    typed.putAll(
        Map.of(
            "known-plate", "plates.yaml",
            "stance", "one plate per foot",
            "plate-left", left,
            "plate-right", right,
            "body-mass", "74",
            "knee-locked", "no",
            "knee-mode", "standing"));
    landmark(typed, 1, "ankle axis", "238", "113", "80");
    landmark(typed, 2, "knee centre", "273", "114", "498");
    landmark(typed, 3, "foot reference point", "", "113", "0");
    typed.put("target[1].source", "Invented instructions for the demo knee, section 3");
    return typed;
  }

  private static void landmark(
      Map<String, String> typed, int number, String name, String forward, String left, String up) {
    String row = "landmark[" + number + "].";
    typed.put(row + "name", name);
    typed.put(row + "forward", forward);
    typed.put(row + "rightward-sense", "left");
    typed.put(row + "rightward-from", "gap");
    typed.put(row + "rightward", left);
    typed.put(row + "up", up);
  }

  @Test
  void withoutASlipTwoPlatesGiveAResult() throws Exception {
    assertThat(counted(m4(), twoPlates("plate 1", "plate 2"), "m4.txt", sample("m4/barefoot.txt")))
        .contains("value=\"keep\"");
  }

  /** 4 */
  @Test
  void platesExchangedInTheFormAreToldAtTheStance() throws Exception {
    assertThat(counted(m4(), twoPlates("plate 2", "plate 1"), "m4.txt", sample("m4/barefoot.txt")))
        .doesNotContain("value=\"keep\"")
        .containsPattern("id=\"stance-fault\"><p>[^<]*the left foot's centre of pressure lies");
  }

  /** 5 */
  @Test
  void platesExchangedAtTheCablesAreToldAtStanceAndMarks() throws Exception {
    String exchanged =
        sample("m4/barefoot.txt").replace("P1 ", "P3 ").replace("P2 ", "P1 ").replace("P3 ", "P2 ");
    assertThat(counted(m4(), twoPlates("plate 1", "plate 2"), "m4.txt", exchanged))
        .doesNotContain("value=\"keep\"")
        .containsPattern("id=\"stance-fault\"><p>the centres of pressure under the feet would lie")
        .contains("id=\"landmark-2-rightward-fault\"");
  }

  private TypedStand kept() throws Exception {
    TypedStand stand = k7();
    String page = counted(stand, Map.of(), "barefoot-1.csv", sample("k7/barefoot-1.csv"));
    assertThat(
            stand.typeAs(Map.of(), "action", "keep", "record-head", OpenWindow.head(page)).body())
        .contains("Kept as entry");
    return stand;
  }

  /** 12: nothing is taken over by itself. */
  @Test
  void aLandmarkThatIsNotConfirmedIsMissing() throws Exception {
    Map<String, String> none =
        Map.of("landmark[2].forward", "", "landmark[2].rightward", "", "landmark[2].up", "");
    assertThat(counted(kept(), none, "barefoot-2.csv", sample("k7/barefoot-2.csv")))
        .doesNotContain("value=\"keep\"")
        .containsPattern("id=\"target-1-[a-z]+-fault\"><p>the target is for the landmark 'knee");
  }

  /** 13 */
  @Test
  void marksTakenOverAlthoughTheHeelChangedAreAskedAboutAtTheirHeights() throws Exception {
    Map<String, String> boot = Map.of("worn", "boot", "heel", "40");
    assertThat(counted(kept(), boot, "barefoot-2.csv", sample("k7/barefoot-2.csv")))
        .doesNotContain("value=\"keep\"")
        .contains(
            "id=\"landmark-1-up-fault\"",
            "id=\"landmark-2-up-fault\"",
            "id=\"landmark-3-up-fault\"");
  }

  /** The record says whose and which leg it is, and which components are worn. */
  @ParameterizedTest
  @CsvSource({
    "2 wrong side, side, left, side: right",
    "3 another wearer's sheet, wearer, X9, K7",
    "15 stance width 22, stance-width-mm, 22, stance:",
    "20 serial not the record's, components[1].serial, D-0999, D-0001"
  })
  void whatHasNoFieldCannotBeTypedOrSent(String slip, String field, String value, String kept)
      throws Exception {
    TypedStand stand = k7();
    window.send(
        stand.base() + "/parts",
        "components[1].what",
        "foot",
        "components[1].name",
        "demo foot",
        "components[1].serial",
        "D-0001",
        "record-head",
        OpenWindow.head(window.page(stand.base() + "/parts")),
        "by-initials",
        "AB");
    String page =
        counted(stand, Map.of(field, value), "barefoot-1.csv", sample("k7/barefoot-1.csv"));
    assertThat(NAME.matcher(page).results().map(name -> name.group(1)))
        .as(slip)
        .contains("landmark[1].up", "worn")
        .noneMatch(name -> name.matches("side|wearer|.*width.*|.*(serial|confirm|based).*"));
    stand.typeAs(Map.of(field, value), "action", "keep", "record-head", OpenWindow.head(page));
    assertThat(keptSheet())
        .as(slip)
        .contains(kept)
        .doesNotContainPattern("(?m): '?" + value + "'?($|[,}])");
  }

  private String keptSheet() throws IOException {
    try (Stream<Path> all = Files.walk(folder.resolve("records"))) {
      return Files.readString(all.filter(f -> f.endsWith("sheet.yaml")).findFirst().orElseThrow());
    }
  }
}
