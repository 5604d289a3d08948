package caryatid.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NamedTest {
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
    Named<BenchItem> term = Named.of(BenchItem.HEIGHT);
    Named<BenchItem> more = new Named<>(Optional.of(BenchItem.HEIGHT), "with the shoe");
    assertThat(term.key()).isEqualTo(more.key());
    assertThat(term.key()).isNotEqualTo(Named.of(BenchItem.HEEL_HEIGHT).key());
    assertThat(term.key()).isNotEqualTo(words("height"));
    assertThat(term.key()).isNotEqualTo(words("BenchItem.HEIGHT"));
    assertThat(term.is(BenchItem.HEIGHT)).isTrue();
    assertThat(more.is(BenchItem.HEEL_HEIGHT)).isFalse();
  }

  @Test
  void aNameHasATermOrAWord() {
    assertThatThrownBy(() -> Named.words(" ")).isInstanceOf(IllegalArgumentException.class);
  }

  private static Named.Key words(String text) {
    return Named.<BenchItem>words(text).key();
  }
}
