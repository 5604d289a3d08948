package caryatid.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.DemoRecord;
import caryatid.demo.Entries;
import caryatid.entry.BenchAlignment;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.wording.Wording;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which settings of a bench alignment are said, and which are counted as unchanged. */
class ChangedSettingsTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final String WAS =
      "item:socket flexion|set:5.25|unit:deg|recommended:4.5|why:stiff hip|note:checked";

  /** Keys and values, with a bar between them. */
  private static Answers row(String row) {
    return DemoRecord.answers(
        Stream.of(row.split("\\|"))
            .map(field -> field.split(":"))
            .flatMap(field -> Stream.of(field[0], value(field[0], field[1])))
            .toArray());
  }

  private static Object value(String key, String text) {
    return key.equals("set") || key.equals("recommended") ? new BigDecimal(text) : text;
  }

  private static Entries benches(String... benches) {
    Entries entries = Entries.opened();
    for (String bench : benches) {
      Answers[] rows =
          Stream.of(bench.split(";")).map(ChangedSettingsTest::row).toArray(Answers[]::new);
      entries.add(EntryKind.BENCH_ALIGNMENT, DemoRecord.rows("items", rows));
    }
    return entries;
  }

  private static List<String> lines(Entries entries, int number) {
    List<Entry> all = entries.all();
    Entry entry = all.get(number - 1);
    BenchAlignment bench = entry.content(BenchAlignment.class).orElseThrow();
    return new ChangedSettings(all, entry, bench)
        .lines(ENGLISH).stream().map(line -> line.replace('\u00a0', ' ')).toList();
  }

  /** What is left out now says nothing else than what was said then. */
  @ParameterizedTest
  @CsvSource({
    "item:socket flexion|set:5.25|unit:deg|recommended:4.5|why:stiff hip|note:checked, true",
    "item:socket flexion|set:5.250|unit:deg, true",
    "item:socket flexion|set:5.25|unit:deg|recommended:4.5, true",
    "item:socket flexion|set:5.25|unit:deg|why:stiff hip, true",
    "item:socket flexion|set:5.25|unit:deg|note:checked, true",
    "item:socket flexion|set:5.26|unit:deg, false",
    "item:socket flexion|set:5.25|unit:mm, false",
    "item:socket flexion|set:5.25|unit:deg|recommended:4.6, false",
    "item:socket flexion|set:5.25|unit:deg|why:stiff knee, false",
    "item:socket flexion|set:5.25|unit:deg|note:checked twice, false",
    "item:socket adduction|set:5.25|unit:deg, false"
  })
  void onlyWhatIsAsItWasIsCounted(String now, boolean unchanged) {
    List<String> lines = lines(benches(WAS, now), 3);
    if (unchanged) {
      assertThat(lines).containsExactly("unchanged settings: 1");
    } else {
      assertThat(lines).singleElement().asString().contains("set 5.2").doesNotContain("unchanged");
    }
  }

  @Test
  void settingsAndTorquesAreCountedApart() {
    String pyramid = "item:fasteners|fastener:pyramid|set:15|unit:N m";
    String clamp = "item:fasteners|fastener:clamp|set:12|unit:N m";
    String toes = "item:toe-out|set:6|unit:deg";
    Entries entries =
        benches(
            String.join(";", WAS, toes, pyramid, clamp),
            String.join(";", WAS, "item:toe-out|set:7|unit:deg", pyramid, clamp));
    assertThat(lines(entries, 3))
        .containsExactly(
            "toe-out; set 7 deg",
            "unchanged settings: 1",
            "fasteners secured again to the same torque: 2");
  }

  /** Entries: 1 opening, 2 to 4 bench alignments; the first one has nothing before it. */
  @Test
  void onlyWhatCameBeforeCounts() {
    Entries entries =
        benches(
            "item:toe-out|set:6|unit:deg",
            "item:toe-out|set:7|unit:deg",
            "item:toe-out|set:6|unit:deg");
    assertThat(lines(entries, 2)).containsExactly("toe-out; set 6 deg");
    assertThat(lines(entries, 3)).containsExactly("toe-out; set 7 deg");
    assertThat(lines(entries, 4)).containsExactly("toe-out; set 6 deg");
  }
}
