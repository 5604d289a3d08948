package caryatid.differential;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What was compared and what differed, counted by kind. */
final class Tally {
  private static final int SHOWN = 20;

  private final Pair pair;
  private final Expected expected;
  private final Map<String, int[]> counts = new TreeMap<>();
  private final Map<String, Integer> parts = new TreeMap<>();
  private final List<String> first = new ArrayList<>();

  Tally(Pair pair, Expected expected) {
    this.pair = pair;
    this.expected = expected;
  }

  /** Compares a case; gives whether nothing differs that is not expected. */
  boolean compare(Case one) throws IOException {
    List<Difference> all = pair.differences(one);
    List<Difference> unexpected = expected.unmeant(all);
    int[] count = counts.computeIfAbsent(one.kind(), kind -> new int[3]);
    count[0]++;
    count[1] += !all.isEmpty() && unexpected.isEmpty() ? 1 : 0;
    count[2] += unexpected.isEmpty() ? 0 : 1;
    for (Difference difference : unexpected) {
      String what = difference.part().replaceAll(" of command.*|-report.*(?=\\.)", "");
      parts.merge(one.kind() + ", " + what, 1, Integer::sum);
      if (first.size() < SHOWN) {
        first.add(difference.text());
      }
    }
    return unexpected.isEmpty();
  }

  /** How many cases differ in what is not expected. */
  int differing() {
    return counts.values().stream().mapToInt(count -> count[2]).sum();
  }

  /** Everything that was found, for a person. */
  String text() {
    StringBuilder text = new StringBuilder();
    first.forEach(one -> text.append(one).append('\n'));
    counts.forEach(
        (kind, count) ->
            text.append(
                "%s: %d compared, %d differ as expected, %d differ otherwise%n"
                    .formatted(kind, count[0], count[1], count[2])));
    parts.forEach((part, count) -> text.append(part).append(": ").append(count).append('\n'));
    expected.counts().forEach(line -> text.append(line).append('\n'));
    return text.toString();
  }
}
