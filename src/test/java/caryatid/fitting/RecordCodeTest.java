package caryatid.fitting;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecordCodeTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "K7",
        "K7-right",
        "7",
        "M4-left",
        "P-1234",
        "abc",
        "2026-AB",
        "K1961",
        "AB2026",
        "TT-R-2",
        "R52-links",
        "R52-rechts",
        "R52-gauche",
        "R52-droite",
        "R52-izquierda",
        "R52-derecha",
        "R52-knee",
        "R52-Knie-links"
      })
  void codesAreTakenAndNotQuestioned(String text) {
    assertThat(RecordCode.isCode(text)).isTrue();
    assertThat(RecordCode.likeness(text)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "-K7",
        "K 7",
        "K7/..",
        "..",
        "K7.",
        "con",
        "COM1",
        "\u00c41",
        "a1234567890123456789012345678901234567890"
      })
  void whatIsNoFolderNameEverywhereIsNoCode(String text) {
    assertThat(RecordCode.isCode(text)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Anna",
        "K7-Anna-right",
        "mueller7",
        "mi-ll-er",
        "an-na-left",
        "Linksen",
        "R52-links-Anna"
      })
  void fourLettersInARowLookLikeAName(String text) {
    assertThat(RecordCode.likeness(text)).contains(RecordCode.Likeness.NAME);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "19600317",
        "17031960",
        "K17031960",
        "170360",
        "600317",
        "17-3-1960",
        "1960-03-17",
        "3-17-60",
        "JS1961",
        "js-1961-left",
        "1961-JS",
        "ABC2004"
      })
  void dayMonthAndYearLookLikeADateOfBirth(String text) {
    assertThat(RecordCode.likeness(text)).contains(RecordCode.Likeness.DATE);
  }

  @ParameterizedTest
  @ValueSource(strings = {"99999999", "20269999", "991399", "45-67-1999", "1234567"})
  void otherDigitsDoNot(String text) {
    assertThat(RecordCode.likeness(text)).isEmpty();
  }
}
