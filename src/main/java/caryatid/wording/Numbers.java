package caryatid.wording;

import caryatid.remark.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** Numbers as a language writes them, from their exact decimal value, half away from zero. */
final class Numbers {
  static final String NO_BREAK_SPACE = "\u00a0";
  private static final char MINUS = '\u2212';

  private final char decimalMark;

  Numbers(Locale locale) {
    this.decimalMark = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
  }

  String withUnit(double value, Unit unit) {
    return withUnit(value, unit, unit.decimals());
  }

  String withUnit(double value, Unit unit, int decimals) {
    String space = unit.symbol().isEmpty() || unit == Unit.DEG ? "" : NO_BREAK_SPACE;
    return plain(value, decimals) + space + unit.symbol();
  }

  String signed(double value, Unit unit) {
    String plain = plain(value, unit);
    boolean zero = plain.chars().allMatch(c -> c == '0' || c == decimalMark);
    return zero || plain.charAt(0) == MINUS ? plain : "+" + plain;
  }

  String plain(double value, Unit unit) {
    return plain(value, unit.decimals());
  }

  private String plain(double value, int decimals) {
    return exact(new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP));
  }

  String exact(BigDecimal value) {
    return value.toPlainString().replace('-', MINUS).replace('.', decimalMark);
  }
}
