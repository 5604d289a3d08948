package caryatid.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of the timeline are cut so that none is longer than a page; nothing is lost. */
class EntryCellsTest {
  private static List<Integer> lengths(List<String> cells) {
    return cells.stream().map(String::length).toList();
  }

  /** 1500 characters a cell; the end of a line between two counts beside them. */
  @Test
  void linesShareACellUpToItsLength() {
    String seven = "a".repeat(700);
    assertThat(EntryCells.of(List.of(seven, "b".repeat(800), "c")))
        .containsExactly(seven + "\n" + "b".repeat(800), "c");
    assertThat(EntryCells.of(List.of(seven, "b".repeat(801), "c")))
        .containsExactly(seven, "b".repeat(801) + "\nc");
  }

  @Test
  void aCellHasUpToThirtyLines() {
    assertThat(EntryCells.of(Collections.nCopies(30, "x"))).hasSize(1);
    assertThat(EntryCells.of(Collections.nCopies(31, "x")))
        .containsExactly(String.join("\n", Collections.nCopies(30, "x")), "x");
    assertThat(EntryCells.of(List.of())).containsExactly("");
  }

  /** At the last blank of the first 1501 characters, unless it is in the first half of them. */
  @ParameterizedTest
  @CsvSource({
    "1501, '1500, 1000'",
    "1500, '1500, 999'",
    "1200, '1200, 1299'",
    "751, '751, 1500, 248'",
    "750, '1500, 1000'",
    "100, '1500, 1000'"
  })
  void aLongTextIsCutAtABlankWhereItCan(int blank, String expected) {
    String text = "a".repeat(blank) + " " + "b".repeat(2499 - blank);
    List<String> cells = EntryCells.of(List.of(text));
    assertThat(lengths(cells)).hasToString("[" + expected + "]");
    assertThat(String.join("", cells).replace(" ", "")).isEqualTo(text.replace(" ", ""));
  }

  @Test
  void aTextIsCutOnlyBeyondTheLimit() {
    assertThat(lengths(EntryCells.of(List.of("a".repeat(1500))))).containsExactly(1500);
    assertThat(lengths(EntryCells.of(List.of("a".repeat(1501))))).containsExactly(1500, 1);
    assertThat(lengths(EntryCells.of(List.of("a".repeat(3001))))).containsExactly(1500, 1500, 1);
  }
}
