package caryatid.differential;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Differences that are meant, from a file. Lines that begin with {@code #} say the reason; each
 * line below them is a regular expression for a whole changed line, with its sign ({@code -} the
 * old version's, {@code +} the new one's, {@code ~} bytes alone). A difference is expected if every
 * one of its lines is. After {@code case}, the expression is for one line alone, and where it is
 * found, everything may differ in that case: a recording that is refused now has no report.
 */
final class Expected {
  private record Rule(String reason, Pattern line, boolean ofCase, int[] met) {}

  private static final String CASE = "case ";

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
    boolean ofCase = line.startsWith(CASE);
    Pattern pattern = Pattern.compile(ofCase ? line.substring(CASE.length()) : line);
    rules.add(new Rule(reason, pattern, ofCase, new int[1]));
  }

  /** Those of a case's differences that are not meant; counts the rules that are met. */
  List<Difference> unmeant(List<Difference> ofCase) {
    Optional<Rule> whole =
        rules.stream()
            .filter(r -> r.ofCase() && ofCase.stream().anyMatch(d -> has(d, r)))
            .findFirst();
    whole.ifPresent(rule -> rule.met()[0]++);
    return whole.isPresent()
        ? List.of()
        : ofCase.stream().filter(difference -> !covers(difference)).toList();
  }

  private static boolean has(Difference difference, Rule rule) {
    return difference.lines().stream().anyMatch(line -> rule.line().matcher(line).matches());
  }

  private boolean covers(Difference difference) {
    List<Rule> found = new ArrayList<>();
    for (String line : difference.lines()) {
      rules.stream()
          .filter(r -> !r.ofCase() && r.line().matcher(line).matches())
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
        .map(r -> r.met()[0] + " times expected: " + r.reason() + " (" + r.line() + ")")
        .toList();
  }
}
