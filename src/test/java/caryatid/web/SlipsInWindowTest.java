package caryatid.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The thirty slips of {@code blackbox.ThirtySlipsTest}, as far as they can be typed into the
 * window: none passes in silence, and what is about one field is said there. {@link
 * SlipsOfTwoPlatesTest} has the eight others: 2 to 5, 12, 13, 15 and 20.
 */
class SlipsInWindowTest extends FittingWindow {
  private TypedStand stand;

  @BeforeEach
  void prepare() throws Exception {
    rememberPlate();
    stand = new TypedStand(window, base);
  }

  /** The page with a counted recording, whose draft has no result. */
  private String refused(TypedStand typed, Map<String, String> slip, String recording)
      throws Exception {
    typed.typeAs(slip, "part", "live");
    typed.drop(recording);
    typed.typeAs(slip, "action", "count-1");
    String page = window.page(typed.base() + TypedStand.STEP);
    assertThat(page)
        .doesNotContain("value=\"keep\"")
        .containsPattern("Please check: is this right\\?|No result yet");
    return page;
  }

  @ParameterizedTest
  @CsvSource({
    "10 knee below ankle, landmark[2].up, 82, landmark[1].up, 492",
    "11 missing landmark, landmark[2].name, hip, worn, barefoot",
    "14 heel 1, heel, 1, worn, shoe",
    "16 barefoot with a heel, heel, 15, worn, barefoot",
    "17 a comma that may separate thousands, landmark[2].up, '1,492', worn, barefoot",
    "18 to the wrong side, landmark[2].rightward-sense, left, landmark[1].rightward-sense, left",
    "19 direction reversed, target[1].sense, posterior, worn, barefoot",
    "22 in time to come, entry-at, 2062-03-04T10:15+01:00, worn, barefoot",
    "30 telephone in a note, comfort, call 0171 5551234, worn, barefoot"
  })
  void aSlipOfTheHandGivesNoResult(
      String slip, String field, String typed, String other, String alsoTyped) throws Exception {
    String page = refused(stand, Map.of(field, typed, other, alsoTyped), "barefoot-1.csv");
    assertThat(page).as(slip).contains("-fault\"><p>");
  }

  /** 7 */
  @Test
  void lengthsInCentimetresGiveNoResult() throws Exception {
    Map<String, String> cm = new TreeMap<>();
    TypedStand.sheet()
        .forEach(
            (name, value) -> {
              if (name.matches("landmark\\[\\d]\\.(forward|rightward|up)") && !value.isEmpty()) {
                cm.put(name, Double.toString(Integer.parseInt(value) / 10.0));
              }
            });
    refused(stand, cm, "barefoot-1.csv");
  }

  /** 1 */
  @Test
  void theOtherSidesRecordGivesNoResult() throws Exception {
    TypedStand left = new TypedStand(window, window.start("K7-left", "left"));
    refused(left, Map.of(), "barefoot-1.csv");
  }

  /** 6 */
  @Test
  void momentsTenTimesTooSmallGiveNoResult() throws Exception {
    stand.typeAs(Map.of(), "part", "live");
    String tenth =
        Files.readString(K7.resolve("barefoot-1.csv"))
            .lines()
            .map(SlipsInWindowTest::momentsByTen)
            .collect(Collectors.joining("\n", "", "\n"));
    stand.upload("stand.csv", tenth.getBytes(UTF_8));
    stand.typeAs(Map.of(), "action", "count-1");
    assertThat(window.page(stand.base() + TypedStand.STEP)).doesNotContain("value=\"keep\"");
  }

  private static String momentsByTen(String line) {
    String[] cells = line.split(";");
    for (int i = 4; i < cells.length && !line.startsWith("Time"); i++) {
      double tenth = Double.parseDouble(cells[i].replace(',', '.')) / 10;
      cells[i] = String.format(java.util.Locale.ROOT, "%.2f", tenth).replace('.', ',');
    }
    return String.join(";", cells);
  }

  private void keep() throws Exception {
    stand.typeAs(Map.of(), "part", "live");
    stand.drop("barefoot-1.csv");
    stand.typeAs(Map.of(), "action", "count-1");
    String head = OpenWindow.head(window.page(stand.base() + TypedStand.STEP));
    assertThat(stand.typeAs(Map.of(), "action", "keep", "record-head", head).body())
        .contains("Kept as entry");
  }

  /** 9, 21 and 23 */
  @Test
  void whatDoesNotGoWithTheStandBeforeGivesNoResult() throws Exception {
    keep();
    refused(stand, Map.of(), "barefoot-1.csv");
    stand.typeAs(Map.of(), "action", "remove-1");
    Map<String, String> other = Map.of("target[1].source", "Of another foot, section 9");
    assertThat(refused(stand, other, "barefoot-2.csv")).contains("target-1-source-fault");
  }

  /** 24 */
  @Test
  void aWearerAboveTheMakersLimitIsAskedAbout() throws Exception {
    send(
        "/parts",
        "components[1].what",
        "foot",
        "components[1].name",
        "demo foot",
        "components[1].serial",
        "D-0001",
        "components[1].body-mass-highest-kg",
        "70");
    refused(stand, Map.of(), "barefoot-1.csv");
  }

  /** 8 and 25 to 29: forms of entries. */
  @ParameterizedTest
  @CsvSource({
    "length-and-pelvis, landmarks[1].landmark, iliac crest, landmarks[1].left-mm, 98.6, note",
    "bench-alignment, items[11].item, ankle plantarflexion, items[11].set, 40, items-11",
    "bench-alignment, items[18].item, ankle plantar flexion, items[18].set, 4, items-18-item",
    "dynamic-alignment, observations[16].deviation, vaultin, observations[16].severity, slight,"
        + " observations-16-deviation",
    "dynamic-alignment, comfort, 70, skin, no marks, comfort",
    "dynamic-alignment, comfort, '', skin, '', faults"
  })
  void aSlipInAFormIsToldAtItsField(
      String step, String field, String typed, String other, String alsoTyped, String at)
      throws Exception {
    HttpResponse<String> sent =
        send("/" + step, field, typed, other, alsoTyped, "landmarks[1].right-mm", "99.1");
    assertThat(sent.statusCode()).isEqualTo(422);
    assertThat(sent.body()).containsPattern("id=\"" + at + "[a-z-]*\"");
  }
}
