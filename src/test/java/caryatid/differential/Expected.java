package caryatid.differential;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Differences that are meant, from a file. Lines that begin with {@code #} say the reason; each
 * line below them is a regular expression for a whole changed line, with its sign ({@code -} the
 * old version's, {@code +} the new one's, {@code ~} bytes alone). A difference is expected if every
 * one of its lines is.
 */
final class Expected {
  private record Rule(String reason, Pattern line, int[] met) {}

  private final List<Rule> rules = new ArrayList<>();

  /**
   * Reads them.
   *
   * @throws IOException if the file cannot be read, or a line has no reason above it
   */
  static Expected read(Path file) throws IOException {
    return of(Files.readAllLines(file));
  }

  static Expected of(List<String> lines) throws IOException {
    Expected expected = new Expected();
    String reason = "";
    boolean above = false;
    for (String line : lines) {
      if (line.startsWith("#")) {
        String more = line.substring(1).strip();
        reason = above ? reason + " " + more : more;
      } else if (!line.isBlank()) {
        expected.add(reason, line);
      } else {
        reason = "";
      }
      above = line.startsWith("#");
    }
    return expected;
  }

  private void add(String reason, String line) throws IOException {
    if (reason.isEmpty()) {
      throw new IOException("no reason above " + line);
    }
    rules.add(new Rule(reason, Pattern.compile(line, Pattern.DOTALL), new int[1]));
  }

  /** Whether a difference is meant; counts the rules that say so. */
  boolean covers(Difference difference) {
    List<Rule> found = new ArrayList<>();
    for (String line : difference.lines()) {
      rules.stream()
          .filter(r -> r.line().matcher(line).matches())
          .findFirst()
          .ifPresent(found::add);
    }
    boolean all = found.size() == difference.lines().size();
    if (all) {
      found.forEach(rule -> rule.met()[0]++);
    }
    return all;
  }

  /** How often each rule was met. */
  List<String> counts() {
    return rules.stream()
        .map(r -> r.met()[0] + " lines expected: " + r.reason() + " (" + r.line() + ")")
        .toList();
  }
}
