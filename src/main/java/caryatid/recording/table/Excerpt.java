package caryatid.recording.table;

import caryatid.remark.Argument;

/**
 * The part of a file's text that a problem quotes: no more than fits a line, and nothing
 * unprintable.
 */
final class Excerpt {
  private static final int LONGEST = 40;

  private Excerpt() {}

  static Argument of(String text) {
    String stripped = text.strip();
    String shown =
        stripped.length() <= LONGEST ? stripped : stripped.substring(0, LONGEST - 3) + "...";
    return Argument.text(shown.replaceAll("\\p{Cntrl}", "\uFFFD"));
  }
}
