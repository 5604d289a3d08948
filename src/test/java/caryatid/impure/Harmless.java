package caryatid.impure;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Locale;

/** What code that computes may do, though it is near to what it may not. */
public final class Harmless {
  private Harmless() {}

  static String format(double number) {
    return String.format(Locale.ROOT, "%.1f", number);
  }

  static String cases(String text) {
    return text.toLowerCase(Locale.ROOT) + text.toUpperCase(Locale.ROOT);
  }

  static String bytes(String text) {
    return new String(text.getBytes(UTF_8), UTF_8);
  }

  static String decimals(double number) {
    return new DecimalFormat("0.0", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(number);
  }

  static Instant time(OffsetDateTime given) {
    return given.toInstant();
  }

  static void copy(double[] from, double[] to) {
    System.arraycopy(from, 0, to, 0, from.length);
  }
}
