package caryatid.wording;

import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * How many decimals the numbers of one sentence take: those of their unit, and more where a limit
 * and a value that exceeds it would print alike, or a number that is not zero as zero.
 */
final class Decimals {
  private static final int MOST_MORE = 4;

  private Decimals() {}

  /** The decimals of a sentence's numbers in a unit. */
  static int of(Unit unit, List<Argument> arguments) {
    List<Double> values =
        arguments.stream()
            .filter(a -> a instanceof Argument.Quantity q && q.unit() == unit)
            .map(a -> ((Argument.Quantity) a).value())
            .distinct()
            .toList();
    if (unit != Unit.COUNT) {
      for (int more = 0; more <= MOST_MORE; more++) {
        if (told(values, unit.decimals() + more)) {
          return unit.decimals() + more;
        }
      }
    }
    return unit.decimals();
  }

  private static boolean told(List<Double> values, int decimals) {
    List<BigDecimal> rounded =
        values.stream()
            .map(v -> new BigDecimal(v).setScale(decimals, RoundingMode.HALF_UP))
            .toList();
    boolean zero =
        rounded.stream().filter(r -> r.signum() == 0).count()
            > values.stream().filter(v -> v == 0).count();
    return !zero && rounded.stream().distinct().count() == values.size();
  }
}
