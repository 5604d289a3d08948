package caryatid.report.pages;

import java.util.Locale;

/** Words that begin a line. */
final class Capitals {
  private Capitals() {}

  /** The words with their first letter as a capital. */
  static String first(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
