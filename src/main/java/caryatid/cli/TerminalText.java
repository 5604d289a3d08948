package caryatid.cli;

/**
 * Text that is safe to print. What people wrote must neither control the terminal nor look like a
 * line of the program's output.
 */
final class TerminalText {
  static final char REPLACED = '\ufffd';

  private TerminalText() {}

  /** A line with control characters replaced; lines within it begin under its first character. */
  static String line(String text) {
    String indent = text.substring(0, text.length() - text.stripLeading().length());
    return harmless(text).replace("\n", "\n" + indent);
  }

  /** A line in which there is no other: what would begin one is replaced. */
  static String single(String text) {
    return harmless(text).replace('\n', REPLACED);
  }

  /** JSON in which what could act is written by its number, which says the same. */
  static String json(String json) {
    StringBuilder shown = new StringBuilder(json.length());
    for (int i = 0; i < json.length(); i++) {
      char c = json.charAt(i);
      shown.append(isActing(c) ? String.format(java.util.Locale.ROOT, "\\u%04x", (int) c) : c);
    }
    return shown.toString();
  }

  /** Text with control and bidirectional characters replaced, but for ends of lines and tabs. */
  static String harmless(String text) {
    int acting = 0;
    while (acting < text.length() && !isActing(text.charAt(acting))) {
      acting++;
    }
    if (acting == text.length()) {
      return text;
    }
    StringBuilder shown = new StringBuilder(text);
    for (int i = acting; i < shown.length(); i++) {
      if (isActing(shown.charAt(i))) {
        shown.setCharAt(i, REPLACED);
      }
    }
    return shown.toString();
  }

  /** Control characters of both sets, marks of direction, and the two further ends of lines. */
  static boolean isActing(char c) {
    return c < ' ' && c != '\n' && c != '\t'
        || c >= 0x7f && c <= 0x9f
        || c == 0x061c
        || c == 0x200e
        || c == 0x200f
        || c >= 0x2028 && c <= 0x202e
        || c >= 0x2066 && c <= 0x2069;
  }
}
