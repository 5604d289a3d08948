package caryatid.report.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation: ISO 216:2007, A4; ANSI/ASME Y14.1, A: 8.5 by 11 inches of 25.4 mm. */
class PaperTest {
  @ParameterizedTest
  @CsvSource({"A4, 210, 297", "LETTER, 215.9, 279.4"})
  void eachPaperHasItsStandardsSize(Paper paper, double widthMm, double heightMm) {
    assertThat(paper.widthMm()).isEqualTo(widthMm);
    assertThat(paper.heightMm()).isEqualTo(heightMm);
    assertThat(paper.textWidthMm()).isCloseTo(widthMm - 12 - 12, within(1e-9));
  }
}
