package caryatid.sheet.yaml;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Guesses which of the known names was meant by an unknown one. */
public final class NameSuggester {
  private NameSuggester() {}

  /**
   * The nearest known name: the same but for capitals, blanks and underscores; the same with a unit
   * behind it; or one that differs in at most a third of its letters.
   */
  public static Optional<String> by(String unknown, Collection<String> known) {
    String name = even(unknown);
    return known.stream()
        .filter(k -> distance(name, even(k)) <= Math.max(1, k.length() / 3))
        .min(Comparator.comparing(k -> distance(name, even(k))));
  }

  /** The nearest known name, if it differs in no more than one letter in seven. */
  public static Optional<String> slip(String unknown, Collection<String> known) {
    String name = even(unknown);
    return known.stream()
        .filter(k -> levenshtein(name, even(k)) <= Math.max(1, k.length() / 7))
        .min(Comparator.comparing(k -> levenshtein(name, even(k))));
  }

  private static String even(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[ _]", "-");
  }

  private static int distance(String a, String b) {
    return b.startsWith(a + "-") ? 1 : levenshtein(a, b);
  }

  /** Fewest letters to insert, leave out or replace (Levenshtein 1966), row by row. */
  private static int levenshtein(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
