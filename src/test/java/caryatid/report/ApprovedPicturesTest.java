package caryatid.report;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.EarlierState;
import caryatid.alignment.Stand;
import caryatid.chart.PathDrawing;
import caryatid.chart.StripDrawing;
import caryatid.chart.TimeDrawing;
import caryatid.chart.mark.Drawing;
import caryatid.demo.Demo;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.recording.model.Recording;
import caryatid.report.picture.Png;
import caryatid.wording.Wording;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Regression: the pictures of the docs are what the drawings look like. A person who has looked at
 * the new ones approves them with {@code -Dapprove=true}; see docs/drawings.md.
 */
class ApprovedPicturesTest {
  private static final Path APPROVED = Path.of("docs", "drawings");
  private static final Path DIFFERENT = Path.of("target", "pictures");
  private static final double DOTS_PER_INCH = 150;

  /** Versions of the letters' renderer differ at edges: by less than a third of the scale... */
  private static final int SAME_GREY = 80;

  /** ...or in less than two of a thousand pixels. */
  private static final double SAME_SHARE = 0.002;

  private static Drawing drawing(String name) {
    Wording english = Wording.in(Locale.ENGLISH);
    Demo demo = Demo.transtibial(Side.RIGHT);
    List<Stand> one = demo.state(0).stands();
    List<Stand> three = demo.state(-6, 0, 6).stands();
    List<Recording> recordings = List.of(demo.recording());
    return switch (name) {
      case "path" -> PathDrawing.plan(one, recordings, Side.RIGHT, english, 90, 60);
      case "time" -> TimeDrawing.plan(one, recordings, 0, Side.RIGHT, english, 90, 60);
      case "paths-of-three" ->
          PathDrawing.plan(
              three,
              List.of(demo.recording(-6), demo.recording(), demo.recording(6)),
              Side.RIGHT,
              english,
              90,
              60);
      case "before-and-after" ->
          strips(demo, Optional.of(Demo.transtibial(Side.RIGHT).line(80, 38)), Plane.SAGITTAL);
      case "broken" -> strips(demo.line(80, 260), Optional.empty(), Plane.SAGITTAL);
      case "four-landmarks" ->
          strips(Demo.transfemoral(Side.LEFT), Optional.empty(), Plane.SAGITTAL);
      default -> strips(demo, Optional.empty(), Plane.valueOf(name.toUpperCase(Locale.ROOT)));
    };
  }

  private static Drawing strips(Demo demo, Optional<Demo> before, Plane plane) {
    AlignmentState state = demo.state(0);
    Wording english = Wording.in(Locale.ENGLISH);
    return StripDrawing.plan(
        state,
        before.map(earlier -> EarlierState.of(earlier.state(0), "0".repeat(128))),
        plane,
        demo.side(),
        english,
        186,
        StripDrawing.mostMm(state, plane, demo.side(), english, 186));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sagittal",
        "frontal",
        "four-landmarks",
        "before-and-after",
        "broken",
        "path",
        "paths-of-three",
        "time"
      })
  void looksAsApproved(String name) throws IOException {
    Path approved = APPROVED.resolve(name + ".png");
    if (Boolean.getBoolean("approve")) {
      Files.createDirectories(APPROVED);
      Files.write(approved, Png.of(drawing(name), DOTS_PER_INCH));
    }
    BufferedImage before = ImageIO.read(approved.toFile());
    BufferedImage now = Png.picture(drawing(name), DOTS_PER_INCH);
    assertThat(now.getWidth()).isEqualTo(before.getWidth());
    assertThat(now.getHeight()).isEqualTo(before.getHeight());
    double share = compare(before, now, name);
    assertThat(share).as("pixels that differ; see " + DIFFERENT).isLessThan(SAME_SHARE);
  }

  private static double compare(BufferedImage before, BufferedImage now, String name)
      throws IOException {
    BufferedImage shown =
        new BufferedImage(now.getWidth(), now.getHeight(), BufferedImage.TYPE_INT_RGB);
    int different = 0;
    for (int x = 0; x < now.getWidth(); x++) {
      for (int y = 0; y < now.getHeight(); y++) {
        int difference = Math.abs(grey(before.getRGB(x, y)) - grey(now.getRGB(x, y)));
        boolean counts = difference > SAME_GREY;
        different += counts ? 1 : 0;
        shown.setRGB(x, y, counts ? 0xff0000 : 0x808080 | now.getRGB(x, y) >> 1 & 0x7f7f7f);
      }
    }
    double share = (double) different / (now.getWidth() * now.getHeight());
    if (share >= SAME_SHARE) {
      Files.createDirectories(DIFFERENT);
      ImageIO.write(shown, "png", DIFFERENT.resolve(name + ".png").toFile());
    }
    return share;
  }

  private static int grey(int rgb) {
    return ((rgb >> 16 & 0xff) + (rgb >> 8 & 0xff) + (rgb & 0xff)) / 3;
  }
}
