package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.DemoRecord;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.views.LastGood;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What to turn to get back to the last good setting; differences are subtracted by hand. */
class VisitTextNumbersTest {
  @TempDir private Path folder;

  private static Answers item(String name, String set, String unit) {
    return DemoRecord.answers("item", name, "set", new BigDecimal(set), "unit", unit);
  }

  private static Answers bolt(String recommended, String set) {
    return DemoRecord.answers(
        "item",
        "locking bolt",
        "recommended",
        new BigDecimal(recommended),
        "set",
        new BigDecimal(set),
        "unit",
        "N m");
  }

  private static List<String> back(DemoRecord record) throws Exception {
    LastGood good = LastGood.of(record.read(), Optional.empty());
    return VisitText.lines(good, "DEMO-7", Wording.in(Locale.ENGLISH)).stream()
        .map(line -> line.replace('\u00a0', ' '))
        .toList();
  }

  private static Answers within() {
    return DemoRecord.rows(
        "findings",
        DemoRecord.answers(
            "plane",
            "sagittal",
            "side",
            "right",
            "landmark",
            "knee centre",
            "offset-mm",
            20,
            "expanded-mm",
            4,
            "recommended-mm",
            20,
            "below-mm",
            15,
            "above-mm",
            15,
            "result",
            "within",
            "source",
            "instructions (invented)"));
  }

  /** Entries: 1 opening, 2 bench alignment, 3 stand, 4 note, 5 bench alignment. */
  private DemoRecord stood() throws Exception {
    return new DemoRecord(folder)
        .add(
            EntryKind.BENCH_ALIGNMENT,
            DemoRecord.rows(
                "items",
                item("socket flexion", "5.25", "deg"),
                item("toe-out", "6", "deg"),
                item("foot, fore and aft", "12", "mm"),
                bolt("15", "14.25")))
        .add(EntryKind.STAND, within())
        .note("stands at ease");
  }

  @Test
  void everyTurnSaysFromWhereToWhereAndByHowMuchInWhichSense() throws Exception {
    DemoRecord record =
        stood()
            .add(
                EntryKind.BENCH_ALIGNMENT,
                DemoRecord.rows(
                    "items",
                    item("socket flexion", "6.75", "deg"),
                    item("toe-out", "4.5", "deg"),
                    item("foot, fore and aft", "1.2", "deg"),
                    item("socket adduction", "3.5", "deg")));
    assertThat(back(record).get(0))
        .startsWith("The alignment was changed (entry 5) after the last stand (entry 3).");
    assertThat(back(record).get(1))
        .startsWith("The last good stand is entry 3 (2026-03-04 ")
        .endsWith("every tolerance was met.");
    assertThat(back(record).subList(2, back(record).size()))
        .containsExactly(
            "  socket flexion: from 6.75 deg to 5.25 deg (−1.50 deg)",
            "  toe-out: from 4.5 deg to 6 deg (+1.5 deg)",
            "  foot, fore and aft: it was 12 mm then; 1.2 deg is noted now",
            "  socket adduction: 3.5 deg now; the record does not say what it was then",
            "  locking bolt: secure to 15 N m",
            "Change nothing under load. Secure all fasteners, note the change with `record add`,"
                + " and let the wearer stand again between rails or with help at hand.");
  }

  /** A torque is never turned back: the fastener is secured to what is recommended. */
  @Test
  void nothingIsToBeTurnedWhereNothingButATorqueDiffers() throws Exception {
    DemoRecord record =
        stood().add(EntryKind.BENCH_ALIGNMENT, DemoRecord.rows("items", bolt("15", "15.5")));
    assertThat(back(record))
        .contains("According to the record, nothing is set differently now.")
        .contains("  locking bolt: secure to 15 N m")
        .noneMatch(line -> line.contains("15.5"));
  }
}
