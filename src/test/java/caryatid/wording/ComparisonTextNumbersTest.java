package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.DemoRecord;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.views.Comparison;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What comparing two states of a record prints, line by line, from a record in which no two numbers
 * are alike; rounded by hand, half away from zero.
 */
class ComparisonTextNumbersTest {
  @TempDir private Path folder;

  private static List<String> lines(DemoRecord record, int from, int to) throws Exception {
    return ComparisonText.lines(Comparison.of(record.read(), from, to), Wording.in(Locale.ENGLISH));
  }

  private static BigDecimal number(String digits) {
    return new BigDecimal(digits);
  }

  private static Answers stand(String heel, String mass, String share, Answers... findings) {
    Map<String, Answers.Value> values = new LinkedHashMap<>();
    values.putAll(
        DemoRecord.answers(
                "heel-height-mm",
                number(heel),
                "body-mass-kg",
                number(mass),
                "load-share-percent",
                number(share))
            .values());
    values.putAll(DemoRecord.rows("findings", findings).values());
    return new Answers(values);
  }

  /** Offset, half-width, recommended, below and above, mm. */
  private static Answers finding(String landmark, String result, String... mm) {
    return DemoRecord.answers(
        "plane",
        "sagittal",
        "side",
        "right",
        "landmark",
        landmark,
        "offset-mm",
        number(mm[0]),
        "expanded-mm",
        number(mm[1]),
        "recommended-mm",
        number(mm[2]),
        "below-mm",
        number(mm[3]),
        "above-mm",
        number(mm[4]),
        "result",
        result,
        "source",
        "leaflet");
  }

  @Test
  void everyNumberOfAStandStandsInItsOwnPlace() throws Exception {
    DemoRecord record =
        new DemoRecord(folder)
            .add(
                EntryKind.STAND,
                stand(
                    "14.5",
                    "82.5",
                    "42.25",
                    finding("ankle axis", "within", "47.25", "12.44", "44", "7", "11"),
                    finding("knee centre", "within", "-3.75", "9.96", "-4", "5", "9")))
            .add(
                EntryKind.STAND,
                stand(
                    "15.25",
                    "83.75",
                    "43.5",
                    finding("ankle axis", "outside", "31.16", "10.05", "45.5", "6", "13"),
                    finding("knee centre", "within", "-2.65", "8.13", "-4", "5", "9")));
    assertThat(lines(record, 2, 3))
        .containsExactly(
            "From entry 2 to entry 3",
            "static alignment, heel height: 14.5 mm -> 15.25 mm",
            "static alignment, body mass: 82.5 kg -> 83.75 kg",
            "static alignment, load on the prosthetic side: 42.3 % -> 43.5 %",
            "static alignment, sagittal, right, ankle axis, offset: 47.3 mm -> 31.2 mm",
            "static alignment, sagittal, right, ankle axis, uncertainty (± at 95 %):"
                + " 12.4 mm -> 10.1 mm",
            "static alignment, sagittal, right, ankle axis, recommended: 44 mm -> 45.5 mm",
            "static alignment, sagittal, right, ankle axis, tolerance below: 7 mm -> 6 mm",
            "static alignment, sagittal, right, ankle axis, tolerance above: 11 mm -> 13 mm",
            "static alignment, sagittal, right, ankle axis, result:"
                + " tolerance met -> tolerance not met",
            "static alignment, sagittal, right, knee centre, offset: −3.8 mm -> −2.7 mm",
            "static alignment, sagittal, right, knee centre, uncertainty (± at 95 %):"
                + " 10.0 mm -> 8.1 mm");
  }

  @Test
  void everyNumberOfASettingHasItsOwnUnit() throws Exception {
    DemoRecord record =
        new DemoRecord(folder)
            .add(EntryKind.BENCH_ALIGNMENT, settings("5.25", "4.5", "14", "15"))
            .add(EntryKind.BENCH_ALIGNMENT, settings("6.75", "3.5", "16", "17"));
    assertThat(lines(record, 2, 3))
        .containsExactly(
            "From entry 2 to entry 3",
            "bench alignment, socket flexion, recommended: 4.5 deg -> 3.5 deg",
            "bench alignment, socket flexion, set: 5.25 deg -> 6.75 deg",
            "bench alignment, foot forward of the reference line, recommended: 15 mm -> 17 mm",
            "bench alignment, foot forward of the reference line, set: 14 mm -> 16 mm");
  }

  private static Answers settings(
      String flexion, String flexionRecommended, String forward, String forwardRecommended) {
    return DemoRecord.rows(
        "items",
        setting("socket flexion", flexionRecommended, flexion, "deg"),
        setting("foot forward of the reference line", forwardRecommended, forward, "mm"));
  }

  private static Answers setting(String item, String recommended, String set, String unit) {
    return DemoRecord.answers(
        "item", item, "recommended", number(recommended), "set", number(set), "unit", unit);
  }

  @Test
  void aSecondRowOfOneNameIsNumbered() throws Exception {
    DemoRecord record =
        new DemoRecord(folder)
            .add(EntryKind.COMPONENTS, adapters("100.5", "110.5"))
            .add(EntryKind.COMPONENTS, adapters("101.5", "112.5"));
    assertThat(lines(record, 2, 3))
        .containsExactly(
            "From entry 2 to entry 3",
            "components, adapter, body mass, highest: 100.5 kg -> 101.5 kg",
            "components, adapter (2), body mass, highest: 110.5 kg -> 112.5 kg");
  }

  private static Answers adapters(String one, String other) {
    return DemoRecord.rows("components", adapter(one), adapter(other));
  }

  private static Answers adapter(String highest) {
    return DemoRecord.answers(
        "what", "adapter", "name", "demo adapter", "body-mass-highest-kg", number(highest));
  }

  @Test
  void whatWasNotThereWasNothing() throws Exception {
    DemoRecord record =
        new DemoRecord(folder)
            .add(EntryKind.WALKING, DemoRecord.answers("comfort", 8))
            .add(EntryKind.LEG_LENGTH, height());
    assertThat(lines(record, 1, 2))
        .containsExactly("From entry 1 to entry 2", "dynamic alignment, comfort: nothing -> 8");
    assertThat(lines(record, 3, 2))
        .containsExactly(
            "From entry 3 to entry 2", "length and pelvis, landmarks: knee -> nothing");
    assertThat(lines(record, 2, 3))
        .containsExactly(
            "From entry 2 to entry 3",
            "length and pelvis, landmarks: nothing -> knee",
            "length and pelvis, knee, left: nothing -> 481.5 mm",
            "length and pelvis, knee, right: nothing -> 489.25 mm");
  }

  private static Answers height() {
    return DemoRecord.rows(
        "landmarks",
        DemoRecord.answers(
            "landmark", "knee", "left-mm", number("481.5"), "right-mm", number("489.25")));
  }

  /** 47.26 and 47.34 mm are both written as 47.3. */
  @Test
  void digitsThatAreNotShownDoNotDiffer() throws Exception {
    DemoRecord record =
        new DemoRecord(folder)
            .add(
                EntryKind.STAND,
                stand(
                    "14.5",
                    "82.5",
                    "42",
                    finding("ankle axis", "within", "47.26", "12.44", "44", "7", "11")))
            .add(
                EntryKind.STAND,
                stand(
                    "14.5",
                    "82.5",
                    "42",
                    finding("ankle axis", "within", "47.34", "12.36", "44", "7", "11")));
    assertThat(lines(record, 2, 3)).containsExactly("Nothing differs between entries 2 and 3.");
  }
}
