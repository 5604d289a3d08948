package caryatid.chart.mark;

import caryatid.chart.mark.Style.Lettering;

/** Text that a person typed, reduced to characters that can be printed. */
public final class PrintableText {
  /** Stands for a letter that the drawings' letters do not have. */
  private static final String UNKNOWN = "?";

  private PrintableText() {}

  /**
   * A text in one line of letters that can be printed: line ends and tabs become blanks, what is
   * not printed is left out, and letters that are not at hand become a question mark.
   */
  public static String of(String text) {
    StringBuilder printable = new StringBuilder();
    text.codePoints().forEach(letter -> printable.append(printable(letter)));
    return printable.toString().replaceAll(" +", " ").strip();
  }

  private static String printable(int letter) {
    if (Character.isWhitespace(letter)) {
      return " ";
    }
    int type = Character.getType(letter);
    if (type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE) {
      return "";
    }
    boolean known = Fonts.font(Lettering.PLAIN).canDisplay(letter);
    return known && Character.isBmpCodePoint(letter) ? Character.toString(letter) : UNKNOWN;
  }
}
