package caryatid.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Stand;
import caryatid.chart.leg.Leg;
import caryatid.chart.leg.LegView;
import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Scale;
import caryatid.demo.Demo;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import caryatid.recording.model.Recording;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class StripDrawingTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);

  static Drawing plan(Demo demo, Plane plane, Side side) {
    return Strips.plan(demo.state(0), Optional.empty(), plane, side, ENGLISH, 1);
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void theLineIsTrueToScaleAndAnteriorOnTheViewersOwnSide(Side side) {
    Demo demo = Demo.transtibial(side).line(80, 60);
    Leg leg = Leg.of(demo.state(0), Optional.empty(), new LegView(Plane.SAGITTAL, side));
    double knee = leg.at(LandmarkKind.KNEE_CENTRE).orElseThrow().acrossMm();
    assertThat(leg.line().orElseThrow().acrossMm() - knee).isEqualTo(18 * side.lateral());
    Scale scale = Scale.fitting(LegExtent.of(leg), new Box(0, 0, 44, 70));
    PaperPoint low = scale.spot(0, 0);
    PaperPoint moved = scale.spot(100, 100);
    double roundingMm = 1e-9;
    assertThat(moved.rightMm() - low.rightMm())
        .isCloseTo(low.downMm() - moved.downMm(), within(roundingMm));
  }

  @Test
  void leftAndRightAreMirrorImages() {
    Leg left =
        Leg.of(
            Demo.transfemoral(Side.LEFT).state(0),
            Optional.empty(),
            new LegView(Plane.FRONTAL, Side.LEFT));
    Leg right =
        Leg.of(
            Demo.transfemoral(Side.RIGHT).state(0),
            Optional.empty(),
            new LegView(Plane.FRONTAL, Side.RIGHT));
    assertThat(left.levels())
        .extracting(l -> -l.acrossMm())
        .containsExactlyElementsOf(right.levels().stream().map(Leg.Level::acrossMm).toList());
  }

  /** Property: wherever landmarks, line and targets lie, texts neither meet nor leave the paper. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es"})
  void noTwoTextsOverlapAndNoneLeavesTheDrawing(String language) {
    Wording wording = Wording.in(Locale.forLanguageTag(language));
    Random random = new Random(20260304);
    for (int i = 0; i < 60; i++) {
      Demo demo = random(random);
      double share = random.nextDouble();
      Optional<AlignmentState> before =
          random.nextBoolean() ? Optional.of(demo.state(random.nextInt(40))) : Optional.empty();
      AlignmentState state = random.nextBoolean() ? demo.state(0) : demo.state(-6, 0, 6);
      for (Plane plane : Plane.values()) {
        Drawing drawing = Strips.plan(state, before, plane, demo.side(), wording, share);
        Sound.assertSound(drawing, language + ", geometry " + i);
      }
    }
  }

  /** The same of what lies over time and from above, for stands however far apart. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es"})
  void noTwoTextsOverlapOverTimeOrFromAbove(String language) {
    Wording wording = Wording.in(Locale.forLanguageTag(language));
    Random random = new Random(20260305);
    for (int i = 0; i < 12; i++) {
      Demo demo = Demo.transtibial(i % 2 == 0 ? Side.LEFT : Side.RIGHT).line(80, 60);
      double[] shifts = random.doubles(1 + random.nextInt(5), -40, 40).toArray();
      List<Stand> stands = demo.state(shifts).stands();
      List<Recording> recordings = DoubleStream.of(shifts).mapToObj(demo::recording).toList();
      double height = 40 + random.nextInt(40);
      Sound.assertSound(
          PathDrawing.plan(stands, recordings, demo.side(), wording, 88, height), language + i);
      Sound.assertSound(
          TimeDrawing.plan(stands, recordings, 0, demo.side(), wording, 88, height), language + i);
    }
  }

  private static Demo random(Random random) {
    Demo demo = Demo.empty(random.nextBoolean() ? Side.LEFT : Side.RIGHT);
    if (random.nextBoolean()) {
      demo.withoutHorizontalForce();
    }
    demo.line(60 + random.nextInt(60), random.nextInt(250) - 50);
    List<LandmarkKind> kinds = new ArrayList<>(List.of(LandmarkKind.values()));
    int landmarks = 1 + random.nextInt(10);
    for (int i = 0; i < landmarks; i++) {
      String name = "landmark " + i + " with a long name".repeat(random.nextInt(3));
      LandmarkKind kind = kinds.get(random.nextInt(kinds.size()));
      demo.landmark(
          name,
          kind,
          random.nextInt(250) - 60,
          40 + random.nextInt(120),
          20 + random.nextInt(1100),
          random.nextInt(20));
      if (random.nextInt(3) > 0) {
        demo.target(
            Plane.SAGITTAL,
            name,
            random.nextInt(200) - 100,
            random.nextInt(60),
            1 + random.nextInt(60));
        demo.target(
            Plane.FRONTAL,
            name,
            random.nextInt(60) - 30,
            random.nextInt(60),
            1 + random.nextInt(60));
      }
    }
    return demo;
  }
}
