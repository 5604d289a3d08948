package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.DemoRecord;
import caryatid.demo.Numbered;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.views.RecordView;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What showing a record prints, line by line, from a record in which no two numbers of an entry are
 * alike. Half-widths are those of {@link ResultTextNumbersTest}; differences of heights are
 * subtracted by hand.
 */
class RecordTextNumbersTest {
  @TempDir private Path folder;
  private List<String> lines;

  @BeforeEach
  void show() throws Exception {
    DemoRecord record =
        new DemoRecord(folder)
            .add(
                EntryKind.ASSESSMENT,
                DemoRecord.answers("sock-ply", 4, "minutes-since-donning", number("25.5")))
            .add(EntryKind.BENCH_ALIGNMENT, DemoRecord.rows("items", flexion(), torque()))
            .add(EntryKind.COMPONENTS, DemoRecord.rows("components", foot()))
            .add(EntryKind.LEG_LENGTH, lengths())
            .stand(Numbered.result())
            .add(EntryKind.WALKING, DemoRecord.answers("comfort", 8))
            .add(EntryKind.FOOTWEAR, shoe())
            .add(EntryKind.OWN_SETTING, own());
    lines =
        RecordText.lines(RecordView.of(record.read()), Wording.in(Locale.ENGLISH)).stream()
            .map(line -> line.replace('\u00a0', ' '))
            .toList();
  }

  private static BigDecimal number(String digits) {
    return new BigDecimal(digits);
  }

  private static Answers flexion() {
    return DemoRecord.answers(
        "item",
        "socket flexion",
        "recommended",
        number("4.5"),
        "set",
        number("5.25"),
        "unit",
        "deg");
  }

  private static Answers torque() {
    return DemoRecord.answers(
        "item", "locking bolt", "recommended", number("15"), "set", number("14.25"), "unit", "N m");
  }

  private static Answers foot() {
    return DemoRecord.answers(
        "what",
        "foot",
        "name",
        "demo foot",
        "body-mass-highest-kg",
        number("110.5"),
        "mobility-grade-lowest",
        2,
        "mobility-grade-highest",
        3,
        "heel-height-lowest-mm",
        number("5.5"),
        "heel-height-highest-mm",
        number("20.25"));
  }

  private static Answers lengths() {
    Answers.Value heights =
        DemoRecord.rows(
                "landmarks",
                height("iliac crest", "905.5", "893.25"),
                height("knee", "481", "489.5"),
                height("ankle", "77", "77"))
            .values()
            .get("landmarks");
    Map<String, Answers.Value> values = new LinkedHashMap<>(Map.of("landmarks", heights));
    values.putAll(
        DemoRecord.answers("intended-shortening-mm", number("6.5"), "lift-mm", number("3.75"))
            .values());
    return new Answers(values);
  }

  private static Answers height(String landmark, String left, String right) {
    return DemoRecord.answers(
        "landmark", landmark, "left-mm", number(left), "right-mm", number(right));
  }

  private static Answers shoe() {
    return DemoRecord.rows(
        "shoes",
        DemoRecord.answers("shoe", "Sunday shoe", "heel-height-mm", number("18.5"), "stand", 6));
  }

  private static Answers own() {
    return DemoRecord.answers(
        "what",
        "ankle",
        "attempts",
        7,
        "succeeded",
        5,
        "heel-height-wanted-mm",
        number("17.5"),
        "heel-height-set-mm",
        number("16.25"));
  }

  @Test
  void theHeadCountsTheEntries() {
    assertThat(lines.get(0)).matches("Record DEMO-7: 9 entries\\. Head digest [0-9a-f]{128}");
  }

  /** Lines that follow each other, parted by strokes. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "   1  2026-03-04 08:10 +01:00  AB  opening",
        "   2  2026-03-04 08:20 +01:00  AB  assessment|      sock ply: 4"
            + "|      minutes since donning: 25.5",
        "   3  2026-03-04 08:30 +01:00  AB  bench alignment"
            + "|      socket flexion; recommended 4.5 deg; set 5.25 deg"
            + "|      locking bolt; recommended 15 N m; set 14.25 N m",
        "   4  2026-03-04 08:40 +01:00  AB  components"
            + "|      foot; name demo foot; body mass, highest 110.5 kg; mobility grade, lowest 2;"
            + " mobility grade, highest 3; heel height, lowest 5.5 mm;"
            + " heel height, highest 20.25 mm",
        "   5  2026-03-04 08:50 +01:00  AB  length and pelvis"
            + "|      iliac crest; left 905.5 mm; right 893.25 mm; left higher by 12.25 mm"
            + "|      knee; left 481 mm; right 489.5 mm; right higher by 8.5 mm"
            + "|      ankle; left 77 mm; right 77 mm; both level"
            + "|      intended shortening: 6.5 mm|      lift: 3.75 mm",
        "   6  2026-03-04 09:10 +01:00  AB  static alignment",
        "      heel height: 14.5 mm",
        "      body mass: 82.5 kg|      body mass from: force plates"
            + "|      load on the prosthetic side: 42.4 %",
        "   7  2026-03-04 09:20 +01:00  AB  dynamic alignment|      comfort: 8",
        "   8  2026-03-04 09:30 +01:00  AB  footwear"
            + "|      Sunday shoe; heel height 18.5 mm; entry of the stand 6",
        "   9  2026-03-04 09:40 +01:00  AB  wearer's own setting|      what: ankle"
            + "|      attempts: 7|      succeeded: 5|      heel height wanted: 17.5 mm"
            + "|      heel height set: 16.25 mm",
        "|Offsets from stand to stand|  sagittal, right, foot reference point"
            + "|    entry 6: +47.3 ± 12.5 mm; recommended +44.0 (+37.0 to +55.0):"
            + " ○ undecided: 8 mm within the tolerance"
            + "|  sagittal, right, knee centre"
            + "|    entry 6: −12.6 ± 12.7 mm; recommended −4.0 (−9.0 to +5.0):"
            + " × tolerance not met"
            + "|  frontal, right, knee centre"
            + "|    entry 6: +5.8 ± 11.6 mm; recommended +2.0 (−1.0 to +10.0):"
            + " ● tolerance met"
      })
  void everyNumberStandsInItsOwnPlace(String expected) {
    assertThat(lines).containsSequence(expected.split("\\|", -1));
  }

  @Test
  void theWearersAttemptsAreOpen() {
    assertThat(lines).contains("  The wearer succeeded in 5 of 7 attempts at ankle (entry 9).");
  }
}
