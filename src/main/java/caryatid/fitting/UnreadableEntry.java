package caryatid.fitting;

import caryatid.remark.Problem;
import java.util.List;

/**
 * An entry that cannot be read although its bytes are those that were added.
 *
 * @param number its number, by its folder's name
 * @param newer whether a newer version of the program wrote it; otherwise it is no entry that any
 *     version wrote
 * @param problems why it cannot be read
 */
public record UnreadableEntry(int number, boolean newer, List<Problem> problems) {
  public UnreadableEntry {
    problems = List.copyOf(problems);
  }
}
