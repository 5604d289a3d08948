package caryatid.usecase.stand;

/** Numbers as people type them, with a decimal point or a decimal comma. */
public final class TypedNumber {
  private TypedNumber() {}

  /**
   * A number as files write it. A comma before exactly three digits could group thousands: it is
   * left as it is, so that it is refused. What is no number is left as it is as well.
   */
  public static String plain(String typed) {
    boolean comma = typed.matches("[+-]?\\d+,\\d{1,9}") && !couldBeThousands(typed);
    return comma ? typed.replace(',', '.') : typed;
  }

  /** Whether a text has a comma before exactly three digits, so that it could group thousands. */
  public static boolean couldBeThousands(String typed) {
    return typed.matches("[+-]?[1-9]\\d*,\\d{3}");
  }

  /** Whether a text is a number as files write it, without a sign. */
  public static boolean isPlain(String text) {
    return text.matches("\\d{1,9}(\\.\\d{1,9})?");
  }
}
