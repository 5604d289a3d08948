package caryatid.chart;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.SideBySide;
import caryatid.demo.Demo;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Verdict;
import caryatid.views.OffsetSeries;
import caryatid.views.OffsetSeries.Measured;
import caryatid.views.StandChange;
import caryatid.wording.LandmarkWords;
import caryatid.wording.Wording;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RecordDrawingsTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-04T10:15:00+01:00");

  @ParameterizedTest
  @CsvSource({"1, en", "2, de", "6, fr", "17, es", "100, en", "300, de"})
  void offsetsOfAnyNumberOfStandsStayOnThePaperAndApart(int stands, String language) {
    Random random = new Random(stands);
    Wording wording = Wording.in(Locale.forLanguageTag(language));
    for (double size : new double[] {0.01, 1, 30, 900}) {
      OffsetSeries series = series(stands, size, random);
      for (double width : new double[] {100, 186, 192}) {
        Drawing drawing =
            OffsetsDrawing.plan(
                series,
                changes(stands),
                List.of(),
                new LandmarkWords(wording, false),
                wording,
                width);
        Sound.assertSound(drawing, stands + " stands, " + size + " mm, " + width + " mm wide");
      }
    }
  }

  @Test
  void eachStandSaysItsOffsetItsToleranceAndItsResult() {
    OffsetSeries series =
        new OffsetSeries(
            new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, "knee centre"),
            List.of(measured(6, -10.2, Verdict.OUTSIDE)));
    assertThat(
            OffsetsDrawing.plan(
                    series, List.of(), List.of(), new LandmarkWords(ENGLISH, false), ENGLISH, 186)
                .alternative())
        .isEqualTo(
            "sagittal, right, knee centre: load line from the landmark, mm. Entry 6: 10.2\u00a0mm"
                + " posterior ± 8.0\u00a0mm, tolerance +5.0 to +35.0 mm, × tolerance not met.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es"})
  void smallLegsStayOnThePaperAndApartAndAtOneScale(String language) {
    Wording wording = Wording.in(Locale.forLanguageTag(language));
    for (Side side : Side.values()) {
      List<SmallLeg.Titled> states = new ArrayList<>();
      for (double line : new double[] {-40, 20, 60, 200}) {
        states.add(titled("stand-" + states.size(), Demo.transtibial(side).line(80, line)));
      }
      states.add(titled("high", Demo.transfemoral(side)));
      List<Drawing> drawings = SmallLeg.plan(states, side, wording);
      assertThat(drawings).hasSize(5);
      drawings.forEach(d -> Sound.assertSound(d, d.name()));
      double width = 5 * SmallLeg.WIDTH_MM + 4 * 2.5;
      Sound.assertSound(SideBySide.of("row", drawings, 2.5, width), "row");
      assertThat(SmallLeg.plan(states, other(side), wording)).isEmpty();
    }
  }

  @Test
  void asManyFitARowAsTheirWidthsAndGapsSay() {
    assertThat(SideBySide.perRow(185, 35, 2.5)).isEqualTo(5);
    assertThat(SideBySide.perRow(184.9, 35, 2.5)).isEqualTo(4);
    assertThat(SideBySide.perRow(10, 35, 2.5)).isEqualTo(1);
  }

  private static Side other(Side side) {
    return side == Side.LEFT ? Side.RIGHT : Side.LEFT;
  }

  private static SmallLeg.Titled titled(String name, Demo demo) {
    return new SmallLeg.Titled(
        name, "Entry 1234, 10:15, right", "a shoe of a very long name", demo.state(0));
  }

  private static OffsetSeries series(int stands, double size, Random random) {
    List<Measured> measured = new ArrayList<>();
    for (int i = 0; i < stands; i++) {
      Verdict verdict = Verdict.values()[random.nextInt(Verdict.values().length)];
      double middle = size * random.nextGaussian();
      measured.add(
          new Measured(
              2 * i + 2,
              false,
              AT.plusMinutes(i),
              size * random.nextGaussian(),
              size * random.nextDouble(),
              middle - size,
              middle,
              middle + size,
              verdict,
              "instructions",
              Optional.empty(),
              Optional.empty()));
    }
    return new OffsetSeries(
        new LandmarkInPlane(Plane.FRONTAL, Side.LEFT, "a landmark of a long name"), measured);
  }

  private static Measured measured(int entry, double mm, Verdict verdict) {
    return new Measured(
        entry,
        false,
        AT,
        mm,
        8,
        5,
        20,
        35,
        verdict,
        "instructions",
        Optional.empty(),
        Optional.empty());
  }

  private static List<StandChange> changes(int stands) {
    List<StandChange> changes = new ArrayList<>();
    for (int i = 1; i < stands; i++) {
      changes.add(
          new StandChange(
              "c" + i,
              2 * i,
              2 * i + 2,
              AT.plusMinutes(i),
              List.of(),
              Optional.empty(),
              Optional.of("moved"),
              Optional.empty()));
    }
    return changes;
  }
}
