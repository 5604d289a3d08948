package caryatid.differential;

import java.util.List;

/**
 * One part of a case that the two versions do differently.
 *
 * @param in the case
 * @param part exit code, stdout, stderr or a file
 * @param lines those that the old version alone has, after a minus, and those that the new one
 *     alone has, after a plus; or one line after a tilde where no line says the difference
 */
record Difference(Case in, String part, List<String> lines) {
  private static final int SHOWN = 8;
  private static final int WIDTH = 220;

  Difference {
    lines = List.copyOf(lines);
  }

  /** A few lines for a person. */
  String text() {
    StringBuilder text = new StringBuilder(in.kind() + ", " + in.name() + ", " + part + ":");
    lines.stream()
        .limit(SHOWN)
        .map(line -> line.length() > WIDTH ? line.substring(0, WIDTH) + " ..." : line)
        .forEach(line -> text.append("\n    ").append(line));
    if (lines.size() > SHOWN) {
      text.append("\n    ... and ").append(lines.size() - SHOWN).append(" lines more");
    }
    return text.toString();
  }
}
