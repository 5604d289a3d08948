package caryatid.chart.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.axis.ValueTick;
import org.junit.jupiter.api.Test;

/** Which millimetres of a strip have a tick, and which a number. */
class OffsetAxisTest {
  private static List<NumberTick> ticks(double lowestMm, double highestMm) {
    OffsetAxis axis =
        new OffsetAxis(lowestMm, highestMm, mm -> String.format(Locale.ROOT, "%.0f mm", mm));
    return axis.refreshTicks(null, null, null, null);
  }

  @Test
  void everyTenthHasATickAndEveryFiftiethItsNumber() {
    assertThat(ticks(-61, 52))
        .extracting(NumberTick::getText)
        .containsExactly("", "-50 mm", "", "", "", "", "0 mm", "", "", "", "", "50 mm");
    assertThat(ticks(-61, 52))
        .extracting(ValueTick::getValue)
        .containsExactly(
            -60.0, -50.0, -40.0, -30.0, -20.0, -10.0, 0.0, 10.0, 20.0, 30.0, 40.0, 50.0);
  }

  @Test
  void ticksReachToBothEnds() {
    assertThat(ticks(40, 50))
        .extracting(ValueTick::getValue, ValueTick::getTickType)
        .containsExactly(tuple(40.0, TickType.MINOR), tuple(50.0, TickType.MAJOR));
    assertThat(ticks(41, 49)).isEmpty();
  }
}
