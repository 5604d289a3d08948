package caryatid.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Writes into a trial sheet what was asked and is meant so. */
public final class SheetAnswers {
  private static final Pattern IN_ONE_LINE =
      Pattern.compile("(?m)^(as-meant:[ \\t]*\\[)([^\\]\\n]*)(\\].*)$");
  private static final Pattern LINE_BY_LINE = Pattern.compile("(?m)^as-meant:[ \\t]*\\n([ \\t]*)-");

  private SheetAnswers() {}

  /** The sheet's bytes with further answers under {@code as-meant}. */
  public static byte[] with(byte[] sheet, List<String> answers) {
    return with(new String(sheet, UTF_8), answers).getBytes(UTF_8);
  }

  private static String with(String sheet, List<String> answers) {
    List<String> quoted = answers.stream().map(a -> "'" + a.replace("'", "''") + "'").toList();
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
    return sheet + (sheet.endsWith("\n") ? "" : "\n") + "as-meant: [" + all + "]\n";
  }
}
