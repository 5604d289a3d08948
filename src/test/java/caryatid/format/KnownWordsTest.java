package caryatid.format;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.entry.BenchItem;
import caryatid.entry.KneeLock;
import caryatid.entry.form.Answers;
import caryatid.entry.form.Vocabulary;
import caryatid.remark.Coded;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KnownWordsTest {
  private static final KnownWords FIRST = KnownWords.first();

  /** Whoever words a term in another way, or adds one, adds the word to words-added.txt. */
  @ParameterizedTest
  @ValueSource(strings = {"", "_de", "_fr", "_es"})
  void everyWordThatTheProgramShowsForATermIsKnown(String language) throws IOException {
    Properties shown = new Properties();
    try (Reader reader =
        Files.newBufferedReader(
            Path.of("src/main/resources/caryatid/wording/entry" + language + ".properties"))) {
      shown.load(reader);
    }
    for (Vocabulary vocabulary : Vocabulary.values()) {
      for (Coded term : vocabulary.terms()) {
        String key = term.code() + (vocabulary == Vocabulary.POINTS_TO ? ".POINTS_TO" : "");
        assertThat(KnownWords.today().term(vocabulary, shown.getProperty(key)))
            .as(key)
            .contains(term);
      }
    }
  }

  @Test
  void aWordIsKnownHoweverItIsWrittenAndNoOtherIs() {
    assertThat(FIRST.term(Vocabulary.BENCH_ITEM, " Socket  flexion"))
        .contains(BenchItem.SOCKET_FLEXION);
    assertThat(FIRST.term(Vocabulary.BENCH_ITEM, "SCHAFTFLEXION"))
        .contains(BenchItem.SOCKET_FLEXION);
    assertThat(FIRST.term(Vocabulary.BENCH_ITEM, "socket flexions")).isEmpty();
    assertThat(FIRST.term(Vocabulary.DEVIATION, "socket flexion")).isEmpty();
  }

  @Test
  void aWordOfTwoTermsIsGuessedToBeNeither() {
    KnownWords words =
        KnownWords.of(
            List.of(
                "# invented",
                "BenchItem.HEIGHT = height | Höhe",
                "BenchItem.KNEE_HEIGHT = knee axis height | Höhe",
                "BenchItem.ANKLE = ankle | ankle"));
    assertThat(words.term(Vocabulary.BENCH_ITEM, "höhe")).isEmpty();
    assertThat(words.term(Vocabulary.BENCH_ITEM, "height")).contains(BenchItem.HEIGHT);
    assertThat(words.term(Vocabulary.BENCH_ITEM, "ankle")).contains(BenchItem.ANKLE);
  }

  @Test
  void aLockIsKnownAloneAndBeforeItsMode() {
    assertThat(FIRST.kneeLock("Locked")).isEqualTo(name(KneeLock.LOCKED, ""));
    assertThat(FIRST.kneeLock("nicht gesperrt, Stehen, Stufe 2"))
        .isEqualTo(name(KneeLock.NOT_LOCKED, "Stehen, Stufe 2"));
    assertThat(FIRST.kneeLock("standing, not locked"))
        .isEqualTo(new Answers.Value.Name(Optional.empty(), "standing, not locked"));
  }

  /** Unlocked is not locked, in every word for it. */
  @Test
  void aKneeThatIsUnlockedIsOneThatIsNotLocked() {
    assertThat(KnownWords.today().kneeLock("knee unlocked"))
        .isEqualTo(name(KneeLock.NOT_LOCKED, ""));
    assertThat(KnownWords.today().kneeLock("Unlocked, stance phase on"))
        .isEqualTo(name(KneeLock.NOT_LOCKED, "stance phase on"));
    assertThat(FIRST.kneeLock("knee unlocked").code()).isEmpty();
  }

  private static Answers.Value.Name name(Coded term, String text) {
    return new Answers.Value.Name(Optional.of(term), text);
  }

  @Test
  void theTableNamesNoTermThatIsNone() {
    assertThat(FIRST.codes())
        .allMatch(
            code ->
                java.util.Arrays.stream(Vocabulary.values())
                    .anyMatch(v -> v.term(code.replace(".POINTS_TO", "")).isPresent()));
  }
}
