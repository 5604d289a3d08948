package caryatid.recording.table;

import caryatid.recording.model.ImportProblem;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import java.util.ArrayList;
import java.util.List;

/**
 * Cells of a column of times or samples' numbers that are neither: a few of them are reported one
 * by one, a column of nothing else once.
 */
final class WrongTimes {
  private record Wrong(Place place, String cell) {}

  private final List<Wrong> first = new ArrayList<>();
  private int count;

  void wrong(Place place, String cell) {
    count++;
    if (first.size() < BadInput.CAP) {
      first.add(new Wrong(place, cell));
    }
  }

  /** What is wrong with them; a column that is only named like a sample counter is not needed. */
  StageFindings complain(GrowingTable table, String file) {
    boolean all = count > 0 && count == table.rows();
    boolean timed = table.plan().time().isPresent();
    StageFindings findings = StageFindings.none(file);
    if (all && timed) {
      Wrong one = first.get(0);
      return findings.withProblem(
          one.place(), ImportProblem.TIMES_UNREADABLE, Excerpt.of(one.cell()));
    }
    if (!all) {
      ImportProblem problem = timed ? ImportProblem.WRONG_TIME : ImportProblem.WRONG_INDEX;
      for (Wrong wrong : first) {
        findings = findings.withProblem(wrong.place(), problem, Excerpt.of(wrong.cell()));
      }
    }
    return findings;
  }
}
