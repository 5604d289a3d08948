package caryatid.cli;

import java.util.regex.Pattern;

/**
 * Text of a record as a terminal may have it. What people wrote, perhaps elsewhere, must not act on
 * the terminal, nor look like an entry of its own where it goes on in a new line.
 */
final class TerminalText {
  private static final Pattern ACTING = Pattern.compile("[\\p{Cc}&&[^\n\t]]");

  private TerminalText() {}

  /** A line with control characters replaced; lines within it begin under its first character. */
  static String line(String text) {
    String indent = text.substring(0, text.length() - text.stripLeading().length());
    return ACTING.matcher(text).replaceAll("\ufffd").replace("\n", "\n" + indent);
  }
}
