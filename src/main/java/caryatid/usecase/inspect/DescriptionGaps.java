package caryatid.usecase.inspect;

import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.model.MomentUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The values that a draft of a plate description leaves open, and the draft with answers. */
final class DescriptionGaps {
  private static final Pattern OPEN = Pattern.compile("(?:([a-z][a-z-]*): )?\\bunknown\\b");
  private static final Pattern SECTION = Pattern.compile("(?:  - |    )?([a-z-]+): [\\[{].*");
  private static final Pattern PLATE = Pattern.compile("  - name: (.*)");
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+([.,]\\d+)?");

  private final String text;
  private final List<String> columns;
  private final List<DescriptionGap> gaps = new ArrayList<>();

  /**
   * @param text the draft
   * @param columns the names of the export's columns
   */
  DescriptionGaps(String text, List<String> columns) {
    this.text = text;
    this.columns = columns.stream().filter(name -> !name.isEmpty()).distinct().toList();
    String plate = "";
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      Matcher named = PLATE.matcher(line);
      plate = named.matches() ? named.group(1) : plate;
      if (!isComment(line)) {
        find(line, plate, number);
      }
    }
  }

  private static boolean isComment(String line) {
    return line.strip().startsWith("#");
  }

  private void find(String line, String plate, int number) {
    Matcher named = SECTION.matcher(line);
    String section = named.matches() ? named.group(1) : "plates";
    OPEN.matcher(line)
        .results()
        .map(found -> section + "." + key(section, found))
        .forEach(
            place -> {
              String about = line.startsWith("    ") ? plate : "";
              gaps.add(new DescriptionGap(place, about, number, choices(place)));
            });
  }

  private static String key(String section, MatchResult found) {
    if (found.group(1) != null) {
      return found.group(1);
    }
    return section.equals("export") ? "columns" : "name";
  }

  private List<String> choices(String place) {
    if (place.startsWith("columns.")) {
      return columns;
    }
    return switch (place) {
      case "axes.right", "axes.anterior", "axes.up" -> List.of("+x", "-x", "+y", "-y", "+z", "-z");
      case "units.force" -> Arrays.stream(ForceUnit.values()).map(u -> u.symbol()).toList();
      case "units.moment" -> Arrays.stream(MomentUnit.values()).map(u -> u.symbol()).toList();
      case "units.cop" -> Arrays.stream(LengthUnit.values()).map(u -> u.symbol()).toList();
      case "plates.measures" -> List.of("fore and aft");
      case "time.unit" -> List.of("s", "ms", "us");
      case "export.decimal-mark" -> List.of("point", "comma");
      default -> List.of();
    };
  }

  List<DescriptionGap> all() {
    return List.copyOf(gaps);
  }

  /**
   * The draft with the answers in the place of its gaps, in their order. One that is blank leaves
   * its gap open. What is no number is written as text, whatever it holds.
   */
  String filled(List<String> answers) {
    StringBuilder filled = new StringBuilder();
    int[] next = {0};
    for (String line : text.lines().toList()) {
      filled.append(isComment(line) ? line : filled(line, answers, next)).append('\n');
    }
    return filled.toString();
  }

  private static String filled(String line, List<String> answers, int[] next) {
    return OPEN.matcher(line)
        .replaceAll(
            found -> {
              int number = next[0]++;
              String answer = number < answers.size() ? answers.get(number).strip() : "";
              String key = found.group(1) == null ? "" : found.group(1) + ": ";
              return answer.isEmpty()
                  ? Matcher.quoteReplacement(found.group())
                  : Matcher.quoteReplacement(key + written(answer));
            });
  }

  private static String written(String answer) {
    return NUMBER.matcher(answer).matches()
        ? answer.replace(',', '.').replace("+", "")
        : "'" + answer.replaceAll("\\p{Cntrl}", " ").replace("'", "''") + "'";
  }
}
