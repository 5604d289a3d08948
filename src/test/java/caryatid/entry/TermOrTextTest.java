package caryatid.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TermOrTextTest {
  @ParameterizedTest
  @CsvSource({
    "pelvis tilt, ' Pelvis  TILT '",
    "Fuß, FUSS",
    "Höhe, 'Ho\u0308he'",
    "a b, 'a\u00a0b'",
    "pelvis tilt, 'pelvis\ttilt'"
  })
  void wordsAreTheSameButForBlanksLettersAndAccents(String one, String other) {
    assertThat(words(one)).isEqualTo(words(other));
  }

  @ParameterizedTest
  @CsvSource({"pelvis tilt, pelvis-tilt", "pelvis tilt, pelvistilt", "Höhe, Hohe", "a, b"})
  void otherWordsAreNot(String one, String other) {
    assertThat(words(one)).isNotEqualTo(words(other));
  }

  @Test
  void aTermIsTheSameWhateverWordsStandWithItAndNeverTheSameAsWords() {
    TermOrText<BenchItem> term = TermOrText.of(BenchItem.HEIGHT);
    TermOrText<BenchItem> more = new TermOrText<>(Optional.of(BenchItem.HEIGHT), "with the shoe");
    assertThat(term.key()).isEqualTo(more.key());
    assertThat(term.key()).isNotEqualTo(TermOrText.of(BenchItem.HEEL_HEIGHT).key());
    assertThat(term.key()).isNotEqualTo(words("height"));
    assertThat(term.key()).isNotEqualTo(words("BenchItem.HEIGHT"));
    assertThat(term.is(BenchItem.HEIGHT)).isTrue();
    assertThat(more.is(BenchItem.HEEL_HEIGHT)).isFalse();
  }

  @Test
  void aNameHasATermOrAWord() {
    assertThatThrownBy(() -> TermOrText.words(" ")).isInstanceOf(IllegalArgumentException.class);
  }

  private static TermOrText.NameKey words(String text) {
    return TermOrText.<BenchItem>words(text).key();
  }
}
