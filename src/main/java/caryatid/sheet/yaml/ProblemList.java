package caryatid.sheet.yaml;

import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.snakeyaml.engine.v2.exceptions.Mark;

/** The problems found in a file so far. */
final class ProblemList {
  private static final Comparator<Problem> IN_ORDER_OF_THE_FILE =
      Comparator.comparing((Problem p) -> p.place().line().orElse(0))
          .thenComparing(p -> p.place().column().map(Integer::valueOf).orElse(0));

  private final List<Problem> problems = new ArrayList<>();
  private final List<Problem> elsewhere = new ArrayList<>();

  void add(Problem problem) {
    problems.add(problem);
  }

  /** Problems of another file that this one needs. */
  void addAll(BadInput other) {
    elsewhere.addAll(other.problems());
  }

  int count() {
    return problems.size() + elsewhere.size();
  }

  /** Those of this file first, in its order. */
  void raise() throws BadInput {
    if (count() > 0) {
      List<Problem> all = new ArrayList<>(problems);
      all.sort(IN_ORDER_OF_THE_FILE);
      all.addAll(elsewhere);
      throw new BadInput(all);
    }
  }

  static Place at(String file, Mark mark) {
    return Place.of(file, mark.getLine() + 1, Integer.toString(mark.getColumn() + 1));
  }
}
