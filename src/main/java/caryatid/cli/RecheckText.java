package caryatid.cli;

import caryatid.alignment.Result;
import caryatid.format.ResultDifference;
import caryatid.remark.Argument;
import caryatid.usecase.RecheckResult.Older;
import caryatid.usecase.RecheckResult.Reproduced;
import caryatid.usecase.RecheckResult.Today;
import caryatid.wording.ResultText;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** A report's result as text, and the outcome of its recomputation. */
final class RecheckText {
  private final Wording wording;

  RecheckText(Wording wording) {
    this.wording = wording;
  }

  List<String> lines(Result result) {
    return ResultText.lines(result, wording);
  }

  List<String> lines(Reproduced reproduced) {
    List<String> lines = new ArrayList<>(lines(reproduced.result()));
    lines.add(fill("Recheck.REPRODUCED", reproduced.madeBy()));
    return lines;
  }

  /** What an older method found, and what today's method would say. */
  List<String> lines(Older older) {
    List<String> lines = new ArrayList<>(ResultText.lines(older.kept(), wording));
    String madeBy = older.kept().program();
    if (older.today() instanceof Today.Same) {
      lines.add(fill("Recheck.SAME", madeBy));
      return lines;
    }
    lines.add(fill("Recheck.OLDER", madeBy));
    if (older.today() instanceof Today.Different numbers) {
      lines.addAll(today(older.kept(), numbers));
    } else if (older.today() instanceof Today.Refused refused) {
      lines.add(wording.word("Recheck.REFUSED"));
      refused.problems().forEach(problem -> lines.add("  " + wording.say(problem)));
    }
    return lines;
  }

  private List<String> today(Result kept, Today.Different numbers) {
    List<String> before = ResultText.lines(kept, wording);
    List<String> now = ResultText.lines(numbers.result(), wording);
    if (before.equals(now)) {
      return inDigits(numbers.differences());
    }
    List<String> lines = new ArrayList<>();
    list("Recheck.TODAY", now, before, lines);
    list("Recheck.IN_PLACE_OF", before, now, lines);
    return lines;
  }

  /** The lines that the others lack, under a heading. */
  private void list(String heading, List<String> of, List<String> others, List<String> lines) {
    List<String> only = of.stream().filter(line -> !others.contains(line)).toList();
    if (!only.isEmpty()) {
      lines.add(wording.word(heading));
      only.forEach(line -> lines.add("  " + line));
    }
  }

  /** Nothing that is shown differs, but the result for programs does. */
  private List<String> inDigits(List<ResultDifference> differences) {
    List<String> lines = new ArrayList<>();
    lines.add(wording.word("Recheck.IN_DIGITS"));
    differences.stream()
        .limit(CheckCommand.MOST)
        .map(d -> fill("Recheck.DIFFERENCE", d.path(), d.before(), d.now()))
        .forEach(line -> lines.add("  " + line));
    return lines;
  }

  private String fill(String key, String... arguments) {
    return wording.fill(key, List.of(arguments).stream().map(Argument::text).toList());
  }
}
