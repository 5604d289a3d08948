package caryatid.chart.mark;

import java.lang.Character.UnicodeScript;
import java.text.Normalizer;
import java.util.EnumSet;
import java.util.Set;

/** Text that a person typed, reduced to characters that can be printed. */
public final class PrintableText {
  /** Stands for a letter that the drawings' letters do not have. */
  public static final String UNKNOWN = "\u25a1";

  private static final char NO_BREAK_SPACE = '\u00a0';
  private static final char SOFT_HYPHEN = '\u00ad';
  private static final char LAST_PLAIN = '\u00ff';

  /** Written from left to right, letter by letter; others need more than their letters. */
  private static final Set<UnicodeScript> WRITTEN =
      EnumSet.of(
          UnicodeScript.LATIN,
          UnicodeScript.GREEK,
          UnicodeScript.CYRILLIC,
          UnicodeScript.COMMON,
          UnicodeScript.INHERITED);

  private PrintableText() {}

  /**
   * A text in one line of letters that can be printed: line ends and tabs become blanks, what is
   * not printed is left out, and letters that are not at hand become an empty box.
   */
  public static String of(String text) {
    return letters(text).replaceAll(" +", " ").strip();
  }

  /** The same, with all blanks as they are. */
  public static String letters(String text) {
    if (isPlain(text)) {
      return text;
    }
    StringBuilder printable = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .forEach(letter -> printable.append(printable(letter)));
    return printable.toString();
  }

  /**
   * Whether all of it is of the first letters of Unicode that are printed, which is quickly said.
   */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char letter = text.charAt(i);
      boolean plain =
          letter >= ' ' && letter <= '~' || letter > NO_BREAK_SPACE && letter <= LAST_PLAIN;
      if (!plain || letter == SOFT_HYPHEN) {
        return false;
      }
    }
    return true;
  }

  /** Whether every letter of a text is printed as it is; blanks and line ends do not count. */
  public static boolean isComplete(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .allMatch(letter -> Character.isWhitespace(letter) || !isLetter(letter) || isKnown(letter));
  }

  private static String printable(int letter) {
    if (Character.isWhitespace(letter)) {
      return " ";
    }
    if (!isLetter(letter)) {
      return "";
    }
    return isKnown(letter) ? Character.toString(letter) : UNKNOWN;
  }

  private static boolean isLetter(int letter) {
    int type = Character.getType(letter);
    return type != Character.CONTROL && type != Character.FORMAT && type != Character.SURROGATE;
  }

  private static boolean isKnown(int letter) {
    return Character.isBmpCodePoint(letter)
        && WRITTEN.contains(UnicodeScript.of(letter))
        && Fonts.has(letter);
  }
}
