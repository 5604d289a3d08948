package caryatid.chart;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.Stand;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Mark;
import caryatid.demo.Demo;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import caryatid.recording.model.Recording;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class ExtremesTest {

  static Stream<Arguments> extremes() {
    return Stream.of(
        Arguments.of("offset 0", one(0, 0, 10, 10)),
        Arguments.of("offset 200", one(200, 15, 10, 10)),
        Arguments.of("offset -200", one(-200, 15, 10, 10)),
        Arguments.of("tolerance 1", one(10, 10, 0.5, 0.5)),
        Arguments.of("tolerance 60", one(10, 10, 30, 30)),
        Arguments.of("asymmetric", one(10, 10, 0, 25)),
        Arguments.of("eight landmarks", eight()),
        Arguments.of("wearer of 1.2 m", wearer(1200)),
        Arguments.of("wearer of 2.1 m", wearer(2100)),
        Arguments.of("targets that nearly coincide", coinciding()),
        Arguments.of("long names", longNames()),
        Arguments.of("no horizontal force", Demo.transtibial(Side.LEFT).withoutHorizontalForce()),
        Arguments.of(
            "one landmark, no target",
            Demo.empty(Side.RIGHT)
                .landmark("knee centre", LandmarkKind.KNEE_CENTRE, 40, 85, 490, 4)));
  }

  private static Demo one(double offset, double target, double below, double above) {
    return Demo.empty(Side.RIGHT)
        .landmark("ankle axis", LandmarkKind.ANKLE_AXIS, 0, 72, 82, 3)
        .landmark("knee centre", LandmarkKind.KNEE_CENTRE, 40, 85, 490, 4)
        .target(Plane.SAGITTAL, "knee centre", target, below, above)
        .target(Plane.FRONTAL, "knee centre", target, below, above)
        .line(85 + offset, 40 + offset);
  }

  private static Demo eight() {
    Demo demo = Demo.empty(Side.LEFT).line(80, 60);
    for (int i = 0; i < 8; i++) {
      String name = "point " + i;
      demo.landmark(name, LandmarkKind.OTHER, 40 + i, 80 + i, 80 + 110 * i, 3)
          .target(Plane.SAGITTAL, name, 15, 10, 10)
          .target(Plane.FRONTAL, name, 0, 10, 10);
    }
    return demo;
  }

  /** Heights by Drillis and Contini's proportions. */
  private static Demo wearer(double stature) {
    return Demo.empty(Side.RIGHT)
        .landmark("ankle axis", LandmarkKind.ANKLE_AXIS, 0, 72, 0.039 * stature, 3)
        .landmark("knee centre", LandmarkKind.KNEE_CENTRE, 40, 85, 0.285 * stature, 4)
        .landmark("hip", LandmarkKind.HIP, 60, 90, 0.530 * stature, 10)
        .target(Plane.SAGITTAL, "knee centre", 15, 10, 10);
  }

  private static Demo coinciding() {
    return Demo.empty(Side.RIGHT)
        .landmark("knee centre", LandmarkKind.KNEE_CENTRE, 40, 85, 490, 4)
        .landmark("outer patellar border", LandmarkKind.OUTER_PATELLAR_BORDER, 41, 86, 491, 4)
        .target(Plane.SAGITTAL, "knee centre", 15, 10, 10)
        .target(Plane.SAGITTAL, "outer patellar border", 15, 10, 11);
  }

  private static Demo longNames() {
    String name = "upper edge of the second adapter's clamp as seen from outside";
    return Demo.empty(Side.LEFT)
        .landmark(name, LandmarkKind.OTHER, 40, 85, 490, 4)
        .landmark("Oberschenkelschaftbezugspunktsmitte", LandmarkKind.OTHER, 40, 85, 700, 4)
        .target(Plane.SAGITTAL, name, 15, 10, 10);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("extremes")
  void isDrawnSoundlyInEveryLanguage(String which, Demo demo) {
    for (String language : new String[] {"en", "de", "fr", "es"}) {
      Wording wording = Wording.in(Locale.forLanguageTag(language));
      for (Plane plane : Plane.values()) {
        Drawing drawing =
            Strips.plan(demo.state(0), Optional.empty(), plane, demo.side(), wording, 0);
        Sound.assertSound(drawing, which + ", " + plane + ", " + language);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void nothingOfTheUsualIsCutShortInAnyLanguage(String language) {
    Wording wording = Wording.in(Locale.forLanguageTag(language));
    Demo demo = Demo.transtibial(Side.LEFT);
    for (Plane plane : Plane.values()) {
      Drawing drawing =
          Strips.plan(demo.state(0), Optional.of(demo.state(5)), plane, Side.LEFT, wording, 1);
      assertThat(drawing.texts()).extracting(Mark.Text::words).noneMatch(w -> w.endsWith("…"));
    }
    List<Stand> stands = demo.state(0).stands();
    List<Recording> recordings = List.of(demo.recording());
    Drawing path = PathDrawing.plan(stands, recordings, Side.LEFT, wording, 90, 60);
    Drawing time = TimeDrawing.plan(stands, recordings, 0, Side.LEFT, wording, 90, 60);
    for (Drawing drawing : new Drawing[] {path, time}) {
      Sound.assertSound(drawing, language);
      assertThat(drawing.texts()).extracting(Mark.Text::words).noneMatch(w -> w.endsWith("…"));
    }
  }

  static Stream<String> languages() {
    return Stream.of("en", "de", "fr", "es");
  }
}
