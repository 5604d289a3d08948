package caryatid.chart.mark;

import caryatid.chart.mark.Style.Lettering;
import java.lang.Character.UnicodeScript;
import java.text.Normalizer;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/** Text that a person typed, reduced to characters that can be printed. */
public final class PrintableText {
  /** Stands for a letter that the drawings' letters do not have. */
  public static final String UNKNOWN = "\u25a1";

  /** Signs that the letters lack, and what people write for them where they cannot be typed. */
  private static final Map<String, String> PLAIN =
      Map.of("\u2300", "\u00d8", "\u2205", "\u00d8", "\u223c", "~", "\u2714", "\u221a");

  /** Written from left to right, letter by letter; others need more than their letters. */
  private static final Set<UnicodeScript> WRITTEN =
      EnumSet.of(
          UnicodeScript.LATIN,
          UnicodeScript.GREEK,
          UnicodeScript.CYRILLIC,
          UnicodeScript.COMMON,
          UnicodeScript.INHERITED);

  private static final String SUPERSCRIPTS = "\u2070\u2076\u2079\u207a\u207b";
  private static final String SUPERSCRIPTS_PLAIN = "069+-";
  private static final int FIRST_SUBSCRIPT = 0x2080;
  private static final String SUBSCRIPTS_PLAIN = "0123456789+-=()";

  private PrintableText() {}

  /**
   * A text in one line of letters that can be printed: line ends and tabs become blanks, what is
   * not printed is left out, sub- and superscripts that the letters lack are written plainly (CO2,
   * 10^6), and other letters that are not at hand become an empty box.
   */
  public static String of(String text) {
    return letters(text).replaceAll(" +", " ").strip();
  }

  /** The same, with all blanks as they are. */
  public static String letters(String text) {
    StringBuilder printable = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .forEach(letter -> printable.append(printable(letter)));
    return printable.toString();
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
    return isKnown(letter) ? Character.toString(letter) : plain(letter);
  }

  private static boolean isLetter(int letter) {
    int type = Character.getType(letter);
    return type != Character.CONTROL && type != Character.FORMAT && type != Character.SURROGATE;
  }

  private static boolean isKnown(int letter) {
    return Character.isBmpCodePoint(letter)
        && WRITTEN.contains(UnicodeScript.of(letter))
        && Fonts.font(Lettering.PLAIN).canDisplay(letter);
  }

  private static String plain(int letter) {
    int above = SUPERSCRIPTS.indexOf(letter);
    if (above >= 0) {
      return "^" + SUPERSCRIPTS_PLAIN.charAt(above);
    }
    int below = letter - FIRST_SUBSCRIPT;
    if (below >= 0 && below < SUBSCRIPTS_PLAIN.length()) {
      return SUBSCRIPTS_PLAIN.substring(below, below + 1);
    }
    return PLAIN.getOrDefault(Character.toString(letter), UNKNOWN);
  }
}
