package caryatid.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Mark;
import caryatid.demo.Entries;
import caryatid.demo.Invented;
import caryatid.demo.TurnedAnkle;
import caryatid.entry.EntryKind;
import caryatid.views.RecordAdvice;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AdviceDrawingTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);

  private static Entries inTwoHeels() {
    return TurnedAnkle.turnedOnce()
        .add(
            EntryKind.BENCH_ALIGNMENT,
            Invented.answers(
                "items", Invented.answers("item", "heel height", "set", 0, "unit", "mm")))
        .add(EntryKind.STAND, TurnedAnkle.stand(-30, "heel-height-mm", 12))
        .add(EntryKind.STAND, TurnedAnkle.stand(-9, "heel-height-mm", 0));
  }

  private static RecordAdvice advice(Entries entries) {
    return RecordAdvice.of(entries.record(), Map.of()).get(0);
  }

  private static Entries attempted() {
    Entries entries = TurnedAnkle.begun();
    for (double mm : new double[] {14, 15, 17, 15}) {
      entries.add(
          EntryKind.OWN_SETTING,
          Invented.answers(
              "what",
              "ankle",
              "attempts",
              1,
              "succeeded",
              1,
              "heel-height-wanted-mm",
              15,
              "heel-height-set-mm",
              mm));
    }
    return entries;
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es"})
  void everyDrawingStaysOnThePaperAndItsWordsApart(String language) {
    Wording wording = Wording.in(Locale.forLanguageTag(language));
    RecordAdvice turned = advice(inTwoHeels());
    for (double widthMm : new double[] {100, 186}) {
      Sound.assertSound(AdviceDrawing.next(turned, wording, widthMm).orElseThrow(), "next");
      sound(AdviceDrawing.outcomes(turned, wording, widthMm));
      sound(HeelDrawing.heels(turned, wording, widthMm));
      sound(HeelDrawing.attempts(advice(attempted()), wording, widthMm));
    }
  }

  private static void sound(List<Drawing> drawings) {
    assertThat(drawings).extracting(Drawing::name).hasSize(1);
    drawings.forEach(drawing -> Sound.assertSound(drawing, drawing.name()));
  }

  @Test
  void theNextChangeSaysTheOffsetNowAndAfterIt() {
    Drawing next = AdviceDrawing.next(advice(TurnedAnkle.turnedOnce()), ENGLISH, 186).orElseThrow();
    assertThat(next.alternative().replace('\u00a0', ' '))
        .matches(
            "sagittal, right, knee centre: now and after the change, mm\\. Now: 8\\.\\d mm"
                + " posterior \\(90 %: .* posterior to .* posterior\\)\\. After the change: .*"
                + " anterior expected \\(90 %: .*\\)\\.");
    assertThat(next.texts()).extracting(Mark.Text::words).contains("now", "after the change");
  }

  @Test
  void withoutAChangeOnlyTheOffsetNowIsDrawn() {
    RecordAdvice within =
        advice(
            TurnedAnkle.begun()
                .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.ankle(0))
                .add(EntryKind.STAND, TurnedAnkle.stand(0))
                .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.ankle(3))
                .add(EntryKind.STAND, TurnedAnkle.stand(15)));
    Drawing next = AdviceDrawing.next(within, ENGLISH, 186).orElseThrow();
    assertThat(next.texts())
        .extracting(Mark.Text::words)
        .contains("now")
        .doesNotContain("after the change");
    assertThat(AdviceDrawing.next(advice(TurnedAnkle.begun()), ENGLISH, 186)).isEmpty();
  }

  @Test
  void eachStandSaysWhatWasExpectedOfItAndWhatWasMeasured() {
    List<Drawing> drawn = AdviceDrawing.outcomes(advice(TurnedAnkle.turnedOnce()), ENGLISH, 186);
    assertThat(drawn.get(0).alternative().replace('\u00a0', ' '))
        .contains("Entry 7, knee centre, sagittal: 20.0 mm posterior expected")
        .contains("8.0 mm posterior measured");
  }

  /** The stands at one setting of the ankle, by the heel that it is not set for. */
  @Test
  void onlyStandsThatDifferByTheirHeelAloneLieOverTheHeels() {
    var heel = advice(inTwoHeels()).heels().get(0);
    assertThat(heel.measured()).extracting(at -> at.heelMm()).containsExactly(0.0, 12.0, 0.0);
    assertThat(heel.line()).hasSize(13);
    double perMm = (heel.line().get(12).mm() - heel.line().get(0).mm()) / 60;
    assertThat(perMm).isCloseTo(heel.mmPer10Mm() / 10, within(1e-9));
  }

  @Test
  void eachAttemptSaysHowFarItWasOff() {
    Drawing attempts = HeelDrawing.attempts(advice(attempted()), ENGLISH, 186).get(0);
    assertThat(attempts.alternative().replace('\u00a0', ' '))
        .isEqualTo(
            "ankle: heel height set minus height wanted, mm. Attempt 1: −1.0 mm off. Attempt 2: 0.0"
                + " mm off. Attempt 3: +2.0 mm off. Attempt 4: 0.0 mm off.");
  }
}
