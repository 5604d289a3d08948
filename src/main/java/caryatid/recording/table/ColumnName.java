package caryatid.recording.table;

import caryatid.recording.model.UnitNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column's name as the header gives it, split into the name proper and its unit.
 *
 * @param full as it stands in the header, led by the device's name where a row above gives one
 * @param name without the unit
 * @param unit as written in the header or the units row; empty where none is
 */
public record ColumnName(String full, String name, Optional<String> unit) {
  private static final Pattern BRACKETS =
      Pattern.compile("(.*?)\\s*[(\\[{]\\s*([^)\\]}]*?)\\s*[)\\]}]\\s*");

  /** Units that are written without brackets: {@code copx_mm}, {@code Fz / N}, {@code Time ms}. */
  private static final Pattern TAIL =
      Pattern.compile("(.*[^\\s_/])(?:_|\\s*/\\s*|\\s+)([^\\s_/]+)");

  public static ColumnName of(String device, String text) {
    String full = device.isEmpty() ? text : (device + " " + text).strip();
    Matcher brackets = BRACKETS.matcher(full);
    if (brackets.matches() && !brackets.group(1).isEmpty()) {
      return new ColumnName(full, brackets.group(1), unit(brackets.group(2)));
    }
    Matcher tail = TAIL.matcher(full);
    if (tail.matches() && UnitNames.known(tail.group(2))) {
      return new ColumnName(full, tail.group(1), unit(tail.group(2)));
    }
    return new ColumnName(full, full, Optional.empty());
  }

  /**
   * The same name with the unit of a units row, where that has one; with both where they are not
   * the same, which is a unit nobody knows.
   */
  ColumnName withUnit(String below) {
    String text =
        unit.filter(above -> !below.isEmpty() && !UnitNames.same(above, below))
            .map(above -> above + " and " + below)
            .orElse(below);
    return text.isEmpty() ? this : new ColumnName(full, name, Optional.of(text));
  }

  /** Whether a description means this column. */
  public boolean isCalled(String called) {
    return full.equals(called.strip()) || name.equals(called.strip());
  }

  /** The name's words, in small letters: runs of letters and digits. */
  public List<String> words() {
    List<String> words = new ArrayList<>();
    for (String word : name.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}#]+", -1)) {
      if (!word.isEmpty()) {
        words.add(word);
      }
    }
    return words;
  }

  private static Optional<String> unit(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }
}
