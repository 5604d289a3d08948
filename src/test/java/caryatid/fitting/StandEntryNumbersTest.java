package caryatid.fitting;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.demo.DemoRecord;
import caryatid.demo.Numbered;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.Standing;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a stand's entry holds on disk, from a result in which no two numbers are alike. Half-widths
 * are Student's t for 95 % (JCGM 100:2008, table G.2, with more digits) times the root of the sum
 * of the parts' squares, to six decimals.
 */
class StandEntryNumbersTest {
  @TempDir private Path folder;
  private JsonNode content;

  @BeforeEach
  void keepAndReadAsAnyProgramWould() throws Exception {
    keep(folder.resolve("plates"), Numbered.state());
  }

  private void keep(Path records, AlignmentState state) throws Exception {
    new DemoRecord(records).stand(new Result(Result.METHOD, "Caryatid", state));
    try (var files = Files.walk(records)) {
      Path entry =
          files
              .filter(f -> f.getParent().endsWith("0002-stand"))
              .filter(f -> f.getFileName().toString().equals("entry.json"))
              .findFirst()
              .orElseThrow();
      content = new ObjectMapper().readTree(entry.toFile()).get("content");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "offset-mm, 47.3, -12.6, 5.8",
    "expanded-mm, 12.469299, 12.667855, 11.630037",
    "recommended-mm, 44, -4, 2",
    "below-mm, 7, 5, 3",
    "above-mm, 11, 9, 8",
    "plane, sagittal, sagittal, frontal",
    "side, right, right, right",
    "landmark, ankle axis, knee centre, knee centre",
    "result, inside too close, outside, within",
    "source, ankle leaflet, knee leaflet, another knee leaflet",
    "valid-for, in shoes, , "
  })
  void everyFieldOfAFindingHoldsItsOwn(String key, String first, String second, String third) {
    List<String> found = new ArrayList<>();
    content.get("findings").forEach(row -> found.add(row.has(key) ? text(row.get(key)) : null));
    assertThat(found).containsExactly(first, second, third);
  }

  /**
   * Body mass: mean of 812 and 806 N over 9.80665 m/s2. Load share: mean of 41.2 and 43.6 % on the
   * right.
   */
  @ParameterizedTest
  @CsvSource({
    "heel-height-mm, 14.5",
    "body-mass-kg, 82.5",
    "body-mass-from, plate",
    "load-share-percent, 42.4",
    "footwear, walking shoe",
    "knee-mode, KneeLock.NOT_LOCKED standing"
  })
  void everyFieldOfTheStandHoldsItsOwn(String key, String value) {
    assertThat(text(content.get(key))).isEqualTo(value);
  }

  /** The sheet of the stand says 83.6 kg. */
  @Test
  void whereNoPlateCarriedTheWholeBodyItsMassIsTheSheets() throws Exception {
    AlignmentState state = Numbered.state();
    List<Stand> stands = state.stands().stream().map(s -> withoutTheWhole(s)).toList();
    keep(
        folder.resolve("feet"),
        new AlignmentState(
            stands, state.offsets(), state.findings(), state.withheld(), state.remarks()));
    assertThat(text(content.get("body-mass-kg"))).isEqualTo("83.6");
    assertThat(text(content.get("body-mass-from"))).isEqualTo("sheet");
  }

  private static Stand withoutTheWhole(Stand s) {
    Standing all = s.standing();
    Standing feet =
        new Standing(
            all.stretch(),
            all.rateHz(),
            all.loads().stream().filter(l -> l.of() != LoadLineOwner.WHOLE_BODY).toList(),
            all.sway(),
            all.placements(),
            all.share(),
            all.remarks());
    return new Stand(
        s.recording(),
        s.sheet(),
        s.description(),
        s.trial(),
        s.landmarks(),
        feet,
        s.offsets(),
        s.moments(),
        s.remarks());
  }

  /** Of a name its code and its words. */
  private static String text(JsonNode value) {
    return value.isObject()
        ? (value.path("code").asText() + " " + value.path("text").asText()).strip()
        : value.asText();
  }

  @Test
  void aFindingHasNoOtherNumbers() {
    List<String> numbers = new ArrayList<>();
    content
        .get("findings")
        .get(0)
        .properties()
        .forEach(
            field -> {
              if (field.getValue().isNumber()) {
                numbers.add(field.getKey());
              }
            });
    assertThat(numbers)
        .containsExactlyInAnyOrder(
            "offset-mm", "expanded-mm", "recommended-mm", "below-mm", "above-mm");
  }
}
