package caryatid.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.geometry.Side;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Writes into a trial sheet what was asked and is meant so, and what a record knows. */
public final class SheetAnswers {
  private static final Pattern IN_ONE_LINE =
      Pattern.compile("(?m)^(as-meant:[ \\t]*\\[)([^\\]\\n]*)(\\].*)$");
  private static final Pattern LINE_BY_LINE = Pattern.compile("(?m)^as-meant:[ \\t]*\\n([ \\t]*)-");

  private static final Pattern PARTS_LINE_BY_LINE =
      Pattern.compile("(?m)^components:[ \\t]*\\n(?=([ \\t]*)-)");
  private static final Pattern PARTS_IN_ONE_LINE =
      Pattern.compile("(?m)^components:[ \\t]*\\[(?=[ \\t]*\\{)");

  private SheetAnswers() {}

  /** The sheet's bytes with further components, before its own. */
  public static byte[] withComponents(byte[] sheet, List<Component> more) {
    return withComponents(new String(sheet, UTF_8), more).getBytes(UTF_8);
  }

  /** The sheet's bytes, saying whether the prosthetic ankle has an axis. */
  public static byte[] withAnkleAxis(byte[] sheet, AnkleAxis axis, ProstheticSide side) {
    return appended(new String(sheet, UTF_8), "ankle-axis: " + word(axis, side) + "\n")
        .getBytes(UTF_8);
  }

  private static String word(AnkleAxis axis, ProstheticSide side) {
    if (axis.legs().isEmpty() || axis.legs().equals(side.sides())) {
      return axis.legs().isEmpty() ? "no" : "yes";
    }
    return axis.legs().contains(Side.LEFT) ? "left" : "right";
  }

  private static String withComponents(String sheet, List<Component> more) {
    List<String> items = more.stream().map(SheetAnswers::item).toList();
    Matcher lines = PARTS_LINE_BY_LINE.matcher(sheet);
    if (lines.find()) {
      String indent = lines.group(1);
      return sheet.substring(0, lines.end())
          + items.stream().map(item -> indent + "- " + item + "\n").collect(Collectors.joining())
          + sheet.substring(lines.end());
    }
    Matcher line = PARTS_IN_ONE_LINE.matcher(sheet);
    String all = String.join(", ", items);
    if (line.find()) {
      return sheet.substring(0, line.end()) + all + ", " + sheet.substring(line.end());
    }
    return appended(sheet, "components: [" + all + "]\n");
  }

  private static String item(Component component) {
    String serial = component.serial().map(s -> ", serial: " + quoted(s)).orElse("");
    return "{what: "
        + quoted(component.what())
        + ", name: "
        + quoted(component.name())
        + serial
        + "}";
  }

  private static String quoted(String text) {
    return "'" + text.replace("'", "''") + "'";
  }

  private static String appended(String sheet, String line) {
    return sheet + (sheet.endsWith("\n") ? "" : "\n") + line;
  }

  /** The sheet's bytes with further answers under {@code as-meant}. */
  public static byte[] with(byte[] sheet, List<String> answers) {
    return with(new String(sheet, UTF_8), answers).getBytes(UTF_8);
  }

  private static String with(String sheet, List<String> answers) {
    List<String> quoted = answers.stream().map(SheetAnswers::quoted).toList();
    String all = String.join(", ", quoted);
    Matcher line = IN_ONE_LINE.matcher(sheet);
    if (line.find()) {
      String before = line.group(2).isBlank() ? "" : line.group(2).strip() + ", ";
      return line.replaceFirst(
          Matcher.quoteReplacement(line.group(1) + before + all + line.group(3)));
    }
    Matcher lines = LINE_BY_LINE.matcher(sheet);
    if (lines.find()) {
      String more =
          quoted.stream()
              .map(answer -> lines.group(1) + "- " + answer + "\n")
              .collect(Collectors.joining());
      int at = lines.end() - lines.group(1).length() - 1;
      return sheet.substring(0, at) + more + sheet.substring(at);
    }
    return appended(sheet, "as-meant: [" + all + "]\n");
  }
}
