package caryatid.report.pages;

import caryatid.entry.EntryContent;
import caryatid.entry.form.Answers;
import caryatid.entry.form.ContentToAnswers;
import caryatid.wording.EntryWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An entry as cells of the timeline, cut so that no row is longer than a page. */
final class EntryCells {
  private static final int LONGEST_ROW = 1500;
  private static final int MOST_LINES = 30;

  /** Parts values that stand in one line. */
  private static final String BETWEEN = " · ";

  private EntryCells() {}

  /** Single values in one line, each row in a line of its own; findings are drawn. */
  static List<String> lines(EntryContent content, Wording wording) {
    Answers answers = ContentToAnswers.answers(content);
    EntryWords words = new EntryWords(wording);
    Map<String, Answers.Value> single = new LinkedHashMap<>(answers.values());
    single.values().removeIf(Answers.Value.Rows.class::isInstance);
    Map<String, Answers.Value> rows = new LinkedHashMap<>(answers.values());
    rows.keySet().removeAll(single.keySet());
    List<String> said = new ArrayList<>(words.lines(new Answers(rows), "findings"));
    if (!single.isEmpty()) {
      said.add(String.join(BETWEEN, words.lines(new Answers(single))));
    }
    return said;
  }

  /** Lines put into as many cells as keep a row within a page. */
  static List<String> of(List<String> lines) {
    List<String> cells = new ArrayList<>();
    List<String> cell = new ArrayList<>();
    for (String part : lines.stream().flatMap(line -> parts(line).stream()).toList()) {
      int length = cell.stream().mapToInt(String::length).sum() + part.length();
      if (!cell.isEmpty() && (length > LONGEST_ROW || cell.size() == MOST_LINES)) {
        cells.add(String.join("\n", cell));
        cell.clear();
      }
      cell.add(part);
    }
    cells.add(String.join("\n", cell));
    return cells;
  }

  /** Parts of a text that end at blanks where they can. */
  private static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    String rest = text.replaceAll("\\s+", " ").strip();
    while (rest.length() > LONGEST_ROW) {
      int blank = rest.lastIndexOf(' ', LONGEST_ROW);
      int end = blank > LONGEST_ROW / 2 ? blank : LONGEST_ROW;
      parts.add(rest.substring(0, end));
      rest = rest.substring(end).strip();
    }
    parts.add(rest);
    return parts;
  }
}
