package caryatid.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.Style.Pen;
import caryatid.demo.Numbered;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The bar by which a print is checked: as long as it says, in tenths. */
class ScaleBarTest {
  private static final double ROUNDING = 1e-9;

  private final Part bar =
      ScaleBar.plan(Numbered.state(), Optional.empty(), Wording.in(Locale.ENGLISH), 186)
          .parts()
          .get(0);

  @Test
  void theBarIsAHundredMillimetresLong() {
    List<Stroke> level =
        Ruled.strokes(Stream.of(bar), Pen.LANDMARK).stream().filter(Ruled::isLevel).toList();
    assertThat(level).hasSize(1);
    assertThat(Ruled.box(level.get(0)).widthMm()).isCloseTo(100, within(ROUNDING));
    assertThat(bar.marks())
        .filteredOn(Text.class::isInstance)
        .extracting(mark -> ((Text) mark).words().replace('\u00a0', ' '))
        .isNotEmpty()
        .first()
        .asString()
        .contains("100 mm");
  }

  @Test
  void everyTenMillimetresHasATickAndEveryFiftyALongerOne() {
    Box line =
        Ruled.box(
            Ruled.strokes(Stream.of(bar), Pen.LANDMARK).stream()
                .filter(Ruled::isLevel)
                .findFirst()
                .orElseThrow());
    List<Box> ticks =
        Ruled.strokes(Stream.of(bar), Pen.LANDMARK).stream()
            .filter(Ruled::isUpright)
            .map(Ruled::box)
            .toList();
    assertThat(ticks.stream().mapToDouble(tick -> tick.leftMm() - line.leftMm()).toArray())
        .containsExactly(
            IntStream.rangeClosed(0, 10).mapToDouble(i -> 10.0 * i).toArray(), within(ROUNDING));
    double longest = ticks.get(0).heightMm();
    assertThat(
            IntStream.rangeClosed(0, 10)
                .filter(i -> Math.abs(ticks.get(i).heightMm() - longest) < ROUNDING))
        .containsExactly(0, 5, 10);
  }
}
