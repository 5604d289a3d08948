package caryatid.cli;

import caryatid.remark.Argument;
import caryatid.usecase.Rechecked;
import caryatid.usecase.Rechecked.Today;
import caryatid.wording.ResultText;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** A report that an older method made, as text: its result, and what today's method would say. */
final class OlderText {
  private OlderText() {}

  static List<String> lines(Rechecked.Older older, Wording wording) {
    List<String> lines = new ArrayList<>(ResultText.lines(older.kept(), wording));
    lines.add(wording.fill("cli.older", Argument.text(older.kept().program())));
    if (older.today() instanceof Today.Numbers numbers) {
      today(older, numbers, wording, lines);
    } else if (older.today() instanceof Today.Refused refused) {
      lines.add(wording.word("cli.olderRefused"));
      refused.problems().forEach(problem -> lines.add(wording.say(problem)));
    }
    return lines;
  }

  private static void today(
      Rechecked.Older older, Today.Numbers numbers, Wording wording, List<String> lines) {
    List<String> before = ResultText.findings(older.kept(), wording);
    List<String> now = ResultText.findings(numbers.result(), wording);
    if (before.equals(now)) {
      lines.add(wording.word("cli.olderSame"));
    } else {
      lines.add(wording.word("cli.olderNow"));
      lines.addAll(now);
    }
  }
}
