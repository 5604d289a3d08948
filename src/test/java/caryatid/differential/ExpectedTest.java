package caryatid.differential;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the comparison of two versions takes for meant, and how it says what it does not. */
class ExpectedTest {
  private static final Case CASE = Case.of("sample", "shoe", "check", "shoe.csv");

  private static Difference difference(String was, String is) {
    return new Difference(CASE, "stdout", Lines.changed(was.getBytes(UTF_8), is.getBytes(UTF_8)));
  }

  @Test
  void aDifferenceIsExpectedWhereEveryLineOfItIs() throws IOException {
    Expected expected =
        Expected.of(List.of("# The word is another one.", "-take care", "\\+look out( \\d)?"));
    assertThat(unmeant(expected, "a\nlook out 3\nb\n")).isEmpty();
    assertThat(unmeant(expected, "a\nlook out x\nb\n")).hasSize(1);
    assertThat(unmeant(expected, "a\nlook out\nc\n")).hasSize(1);
    assertThat(expected.counts())
        .containsExactly(
            "1 times expected: The word is another one. (-take care)",
            "1 times expected: The word is another one. (\\+look out( \\d)?)");
  }

  private static List<Difference> unmeant(Expected expected, String is) {
    return expected.unmeant(List.of(difference("a\ntake care\nb\n", is)));
  }

  @Test
  void everythingMayDifferInACaseThatALineSaysIsMeant() throws IOException {
    Expected expected = Expected.of(List.of("# Refused now.", "case \\+refused.*"));
    Difference refused = difference("", "refused: no load\n");
    Difference page = difference("a\nb\n", "");
    assertThat(expected.unmeant(List.of(page, refused))).isEmpty();
    assertThat(expected.unmeant(List.of(page))).containsExactly(page);
  }

  @Test
  void anExpectationWithoutAReasonIsRefused() {
    assertThatThrownBy(() -> Expected.of(List.of("# About the file.", "", "-take care")))
        .isInstanceOf(IOException.class)
        .hasMessage("no reason above -take care");
  }

  @Test
  void aDifferenceIsToldByItsLinesAlone() {
    assertThat(difference("a\nb\nc\n", "a\nx\nc\n").text())
        .isEqualTo("sample, shoe, stdout:\n    -b\n    +x");
    assertThat(difference("a\n", "a\r\n").text())
        .isEqualTo("sample, shoe, stdout:\n    ~ the same lines, but not the same bytes");
  }

  @Test
  void aMutantIsTheSameForTheSameNumber() {
    assertThat(Mutant.of(7).bytes()).isEqualTo(Mutant.of(7).bytes());
    assertThat(Mutant.of(7).bytes()).isNotEqualTo(Mutant.of(8).bytes());
  }
}
