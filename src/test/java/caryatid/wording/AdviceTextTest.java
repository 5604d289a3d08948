package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Entries;
import caryatid.demo.Invented;
import caryatid.demo.TurnedAnkle;
import caryatid.entry.EntryKind;
import caryatid.views.RecordAdvice;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AdviceTextTest {
  private static List<String> lines(Locale locale) {
    return lines(TurnedAnkle.turnedOnce(), locale);
  }

  private static List<String> lines(Entries entries, Locale locale) {
    return AdviceText.lines(RecordAdvice.of(entries.record(), Map.of()).get(0), Wording.in(locale))
        .stream()
        .map(line -> line.replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void theChangeComesFirstInDegreesThenInTurns() {
    List<String> lines = lines(Locale.ENGLISH);
    assertThat(lines.get(0)).isEqualTo("What to change next, right, from the stand of entry 7:");
    assertThat(lines.get(1))
        .matches(
            "Next: plantarflex the foot by \\d\\.\\d°, to \\d\\.\\d°\\. Probability that every"
                + " offset is then within its tolerance: \\d+ % \\(now < 1 %\\)\\.");
    assertThat(lines.get(2))
        .contains("turns of the set screw. The screws work in pairs: loosen one and tighten");
    assertThat(lines).anyMatch(line -> line.contains("geometry expects"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "fr", "es"})
  void eachLanguageSaysAsMuch(String language) {
    assertThat(lines(Locale.forLanguageTag(language))).hasSameSizeAs(lines(Locale.ENGLISH));
  }

  private static Entries withRange(Object... limits) {
    return TurnedAnkle.turnedOnce()
        .add(
            EntryKind.COMPONENTS,
            Invented.answers(
                "components", Invented.answers(joined(limits, "what", "foot", "name", "foot Q"))))
        .add(
            EntryKind.FOOTWEAR,
            Invented.answers("shoes", Invented.answers("shoe", "boot", "heel-height-mm", 32)))
        .add(EntryKind.STAND, TurnedAnkle.stand(-8));
  }

  private static Object[] joined(Object[] one, Object... other) {
    return Stream.concat(Arrays.stream(other), Arrays.stream(one)).toArray();
  }

  private static List<String> ranges(Entries entries, Locale locale) {
    return new AdviceNumbers(RecordAdvice.of(entries.record(), Map.of()).get(0), Wording.in(locale))
        .ankles().stream().map(line -> line.replace('\u00a0', ' ')).toList();
  }

  /** A typed record has no landmarks, so that nothing is known of what the heel does. */
  @Test
  void theAnklesRangeIsSaidAndTheShoeThatLiesBeyond() {
    assertThat(
            ranges(
                withRange("heel-height-lowest-mm", 0, "heel-height-highest-mm", 25),
                Locale.ENGLISH))
        .containsExactly(
            "foot Q can be set for heels of 0.0 mm to 25.0 mm.",
            "  boot, heel 32.0 mm: set for 25.0 mm, the nearest; this leaves a heel error of 7.0"
                + " mm.");
    assertThat(ranges(withRange("heel-height-highest-mm", 40), Locale.ENGLISH))
        .containsExactly("foot Q can be set for heels of up to 40.0 mm.");
    assertThat(ranges(withRange("heel-height-lowest-mm", 10), Locale.ENGLISH))
        .containsExactly("foot Q can be set for heels of 10.0 mm and more.");
    assertThat(ranges(withRange(), Locale.ENGLISH)).isEmpty();
  }

  /** Stands in two heels have shown 1.5 mm and more for 1 mm: 7 mm are too much. */
  @Test
  void whereAHeelsEffectIsKnownWhatIsLeftIsJudged() {
    Entries known =
        withRange("heel-height-highest-mm", 25)
            .add(
                EntryKind.BENCH_ALIGNMENT,
                Invented.answers(
                    "items", Invented.answers("item", "heel height", "set", 0, "unit", "mm")))
            .add(EntryKind.STAND, TurnedAnkle.stand(-10, "heel-height-mm", 12))
            .add(EntryKind.STAND, TurnedAnkle.stand(15, "heel-height-mm", 0));
    assertThat(ranges(known, Locale.ENGLISH).get(1))
        .isEqualTo(
            "  boot, heel 32.0 mm: set for 25.0 mm, the nearest; this leaves a heel error of 7.0"
                + " mm, and it is not shown that every offset stays within its tolerance.");
    assertThat(lines(known, Locale.ENGLISH)).containsAll(ranges(known, Locale.ENGLISH));
  }
}
