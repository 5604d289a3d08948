package caryatid.report;

import caryatid.remark.Unit;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Collectors;

/** Where an uncertainty comes from, the largest part first. */
final class Budget {
  private Budget() {}

  static String of(Estimate mm, Wording wording) {
    Map<Cause, Double> squares = new EnumMap<>(Cause.class);
    for (Contribution part : mm.contributions()) {
      squares.merge(part.source().cause(), part.amount() * part.amount(), Double::sum);
    }
    return squares.entrySet().stream()
        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
        .map(
            e ->
                wording.word("Budget." + e.getKey().name())
                    + " "
                    + wording.plain(Math.sqrt(e.getValue()), Unit.MM))
        .collect(Collectors.joining(", "));
  }
}
