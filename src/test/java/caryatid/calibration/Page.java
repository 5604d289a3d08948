package caryatid.calibration;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A page in Markdown whose tables stand between marks, so that a command can write them anew. */
final class Page {
  private Page() {}

  /**
   * Puts a table in its place.
   *
   * @throws IllegalArgumentException if the page has no place of that name
   */
  static void put(Path page, String name, Table table) throws IOException {
    String text = Files.readString(page);
    String begin = "<!-- table: " + name + " -->\n";
    String end = "<!-- end of table -->";
    int from = text.indexOf(begin);
    if (from < 0) {
      throw new IllegalArgumentException(page + " has no place for table " + name);
    }
    int after = from + begin.length();
    int to = text.indexOf(end, after);
    Files.writeString(page, text.substring(0, after) + table + text.substring(to));
  }
}
