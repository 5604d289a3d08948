package caryatid.report;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The tables and facts of a page of HTML, as a person reads them. */
final class PageTables {
  private static final Pattern TABLE = Pattern.compile("(?s)<table>(.*?)</table>");
  private static final Pattern ROW = Pattern.compile("(?s)<tr>(.*?)</tr>");
  private static final Pattern CELL = Pattern.compile("(?s)<t[hd][^>]*>(.*?)</t[hd]>");
  private static final Pattern FACT = Pattern.compile("(?s)<dt>(.*?)</dt><dd>(.*?)</dd>");

  private PageTables() {}

  /** Each table's rows, its heading first. */
  static List<List<List<String>>> of(String html) {
    return found(TABLE, html).stream()
        .map(
            table ->
                found(ROW, table.group(1)).stream()
                    .map(
                        row ->
                            found(CELL, row.group(1)).stream().map(c -> plain(c.group(1))).toList())
                    .toList())
        .toList();
  }

  /** Each fact as {@code label: value}. */
  static List<String> facts(String html) {
    return found(FACT, html).stream().map(f -> f.group(1) + ": " + f.group(2)).toList();
  }

  private static String plain(String cell) {
    return cell.replace("&#39;", "'").replace("&quot;", "\"").replace("&amp;", "&");
  }

  private static List<MatchResult> found(Pattern pattern, String text) {
    return pattern.matcher(text).results().toList();
  }
}
