package caryatid.report;

import java.util.Locale;

/** How the program's own names are spelled in files: words in lower case, joined by hyphens. */
final class Spelling {
  private Spelling() {}

  /**
   * {@code copRightMm} or {@code PlatePerFoot} becomes {@code cop-right-mm}, {@code
   * plate-per-foot}.
   */
  static String ofName(String camelCase) {
    String hyphened = camelCase.replaceAll("(?<!^)([A-Z])", "-$1");
    return hyphened.toLowerCase(Locale.ROOT);
  }

  /** {@code LEFT_FOOT} becomes {@code left-foot}. */
  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
