package caryatid.recording.table;

import caryatid.recording.model.Channel;
import caryatid.recording.model.TimeBase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What the lines above a table state as a key and its value. */
public final class Preamble {
  private record KeyValue(String key, String value, int line) {}

  /**
   * A number with the line that states it.
   *
   * @param value the number
   * @param line physical line
   */
  public record Stated(double value, int line) {}

  /**
   * A unit with the line that states it.
   *
   * @param text as it is written
   * @param line physical line
   */
  public record StatedUnit(String text, int line) {}

  private static final Pattern KEY_VALUE =
      Pattern.compile("\\s*([^=:,;\\t]+?)\\s*[=:,;\\t]\\s*(.+?)[\\s,;]*");
  private static final Pattern NUMBER = Pattern.compile("([+-]?\\d+(?:[.,]\\d+)?)\\s*(\\p{L}*).*");

  /** One thousand, or one with three decimals. */
  private static final Pattern THOUSANDS = Pattern.compile("^\\D*\\d{1,3}[.,]\\d{3}(?!\\d)");

  /** Keys of the sampling rate. */
  private static final Predicate<String> RATE =
      Pattern.compile(
              "(sampl\\w*|capture|acquisition|analog\\w*|data|scan)?(frame)?(rate|freq\\w*)(\\[?\\(?hz.*)?"
                  + "|hz|fs|abtastrate")
          .asMatchPredicate();

  /** A rate of frames: a plate may have been sampled several times a frame. */
  private static final Predicate<String> OF_FRAMES =
      Pattern.compile(".*framerate.*").asMatchPredicate();

  /** Stated and other rates that differ by more contradict each other. */
  private static final double SAME_RATE = 0.01;

  /** Keys of the number of rows. */
  private static final Predicate<String> COUNT =
      Pattern.compile(
              "(number|num|no|n)?(of)?(samples|frames|rows|datapoints|scans)([(\\[].*)?"
                  + "|samplecount|framecount")
          .asMatchPredicate();

  /** Keys of the recording's length, and how it is written in seconds. */
  private static final Predicate<String> DURATION =
      Pattern.compile(
              "(recording|trial|measurement|acquisition|capture)?(duration|dauer|messdauer)"
                  + "([(\\[]?s[)\\]]?)?")
          .asMatchPredicate();

  private static final Pattern SECONDS =
      Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*(s|sec|seconds|sekunden)?");

  private final List<KeyValue> entries = new ArrayList<>();

  public Preamble(HeaderBlock head) {
    List<String> lines = head.preamble();
    for (int i = 0; i < lines.size(); i++) {
      Matcher entry = KEY_VALUE.matcher(lines.get(i));
      if (entry.matches()) {
        entries.add(
            new KeyValue(
                unquoted(entry.group(1)), unquoted(entry.group(2)), i + head.preambleLine()));
      } else if (i > 0 && plain(lines.get(i - 1)).equals("devices")) {
        // Under this title some exports write the rate alone.
        entries.add(new KeyValue("rate", lines.get(i), i + head.preambleLine()));
      }
    }
  }

  /**
   * The stated sampling rate, Hz; empty where none is stated, where several differ, or where a
   * number may be read in two ways or is no rate of a force plate.
   */
  public Optional<Stated> rateHz() {
    List<Stated> rates =
        rates().stream().flatMap(entry -> number(entry).stream()).distinct().toList();
    boolean clear =
        rates.stream().mapToDouble(Stated::value).distinct().count() == 1
            && rates().stream().noneMatch(entry -> THOUSANDS.matcher(entry.value()).find())
            && rates.get(0).value() >= TimeBase.SLOWEST_HZ
            && rates.get(0).value() <= TimeBase.FASTEST_HZ;
    return clear ? Optional.of(rates.get(0)) : Optional.empty();
  }

  /**
   * Whether another rate contradicts the stated one. A rate of frames is not contradicted by a
   * multiple of it.
   */
  public boolean contradicts(double otherHz) {
    return rateHz().filter(stated -> differs(stated.value(), otherHz)).isPresent();
  }

  private boolean differs(double statedHz, double otherHz) {
    boolean frames = rates().stream().allMatch(entry -> OF_FRAMES.test(plain(entry.key())));
    double times = frames ? Math.max(1, Math.round(otherHz / statedHz)) : 1;
    return Math.abs(otherHz / (times * statedHz) - 1) > SAME_RATE;
  }

  /** The stated rates as they are written, where they are not clear; else empty. */
  public String unclearRates() {
    return rateHz().isPresent()
        ? ""
        : rates().stream()
            .map(entry -> entry.key() + " " + entry.value())
            .collect(Collectors.joining(", "));
  }

  private List<KeyValue> rates() {
    return entries.stream()
        .filter(entry -> RATE.test(plain(entry.key())) && number(entry).isPresent())
        .toList();
  }

  /** The stated number of rows. */
  public Optional<Stated> rows() {
    return number(COUNT);
  }

  /** The stated length of the recording, s; empty where it is in another unit. */
  public Optional<Stated> durationS() {
    return entries.stream()
        .filter(entry -> DURATION.test(plain(entry.key())))
        .filter(entry -> SECONDS.matcher(entry.value().strip()).matches())
        .flatMap(entry -> number(entry).stream())
        .findFirst();
  }

  /** The stated size of a plate, as it is written. */
  public Optional<String> plateSize() {
    return entries.stream()
        .filter(e -> plain(e.key()).matches("(force)?plate.*(size|dimension).*"))
        .map(KeyValue::value)
        .findFirst();
  }

  /** The stated unit of a quantity. */
  public Optional<StatedUnit> unit(Channel.Quantity quantity) {
    String words =
        switch (quantity) {
          case FORCE -> "force";
          case MOMENT -> "moment|torque";
          case COP -> "cop|length|position|distance";
        };
    return entries.stream()
        .filter(
            e -> plain(e.key()).matches(".*(" + words + ").*units?|units?(of)?.*(" + words + ").*"))
        .map(e -> new StatedUnit(e.value(), e.line()))
        .findFirst();
  }

  private Optional<Stated> number(Predicate<String> key) {
    return entries.stream()
        .filter(entry -> key.test(plain(entry.key())))
        .flatMap(entry -> number(entry).stream())
        .findFirst();
  }

  private static Optional<Stated> number(KeyValue entry) {
    Matcher number = NUMBER.matcher(entry.value().strip());
    return number.matches()
        ? Optional.of(
            new Stated(
                Double.parseDouble(number.group(1).replace(',', '.')) * scale(number.group(2)),
                entry.line()))
        : Optional.empty();
  }

  private static double scale(String unit) {
    return unit.equalsIgnoreCase("khz") ? 1000 : 1;
  }

  private static String plain(String key) {
    return key.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}(\\[]", "");
  }

  private static String unquoted(String text) {
    return text.replaceAll("^\"|\"$", "").strip();
  }
}
