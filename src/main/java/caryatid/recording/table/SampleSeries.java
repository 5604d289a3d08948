package caryatid.recording.table;

import caryatid.recording.model.Samples;
import java.util.Arrays;
import java.util.BitSet;
import java.util.function.IntToDoubleFunction;

/**
 * A series of numbers, one a sample, times a factor. Multiplying it costs nothing, since it shares
 * the numbers: a recording of an hour leaves no room for copies.
 */
public final class SampleSeries {
  private final double[] numbers;
  private final double factor;

  /**
   * @param numbers are not changed by anybody any more
   */
  public SampleSeries(double[] numbers) {
    this(numbers, 1);
  }

  private SampleSeries(double[] numbers, double factor) {
    this.numbers = numbers;
    this.factor = factor;
  }

  public static SampleSeries of(int size, IntToDoubleFunction number) {
    double[] numbers = new double[size];
    Arrays.setAll(numbers, number);
    return new SampleSeries(numbers);
  }

  public int size() {
    return numbers.length;
  }

  public double at(int index) {
    return numbers[index] * factor;
  }

  public SampleSeries times(double by) {
    return by == 1 ? this : new SampleSeries(numbers, factor * by);
  }

  public SampleSeries plus(double by) {
    return by == 0 ? this : of(size(), i -> at(i) + by);
  }

  public boolean allZero() {
    for (double number : numbers) {
      if (number != 0) {
        return false;
      }
    }
    return true;
  }

  /** The mean from an index up to, not including, another. */
  public double mean(int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += at(i);
    }
    return sum / (to - from);
  }

  /**
   * The numbers with 0 in place of some; shares them where it can.
   *
   * @throws IllegalArgumentException if one of the others is not finite
   */
  public Samples without(BitSet left) {
    if (factor == 1 && left.isEmpty()) {
      return Samples.adopt(numbers);
    }
    double[] kept = new double[numbers.length];
    for (int i = 0; i < kept.length; i++) {
      kept[i] = numbers[i] * factor;
    }
    left.stream().forEach(i -> kept[i] = 0);
    return Samples.adopt(kept);
  }
}
