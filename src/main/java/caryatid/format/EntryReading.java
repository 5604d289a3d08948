package caryatid.format;

import caryatid.entry.Entry;
import caryatid.remark.Problem;
import java.util.List;

/** The outcome of reading an entry. */
public sealed interface EntryReading {

  /** It was read. */
  record Done(Entry entry) implements EntryReading {}

  /**
   * A newer version of the program wrote it; what it says is not known to this one.
   *
   * @param problem that says so
   */
  record Newer(Problem problem) implements EntryReading {}

  /**
   * It is no entry that any version of the program wrote.
   *
   * @param problems everything that is wrong
   */
  record Unreadable(List<Problem> problems) implements EntryReading {
    public Unreadable {
      problems = List.copyOf(problems);
    }
  }
}
