package caryatid.calibration;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/** The file that keeps every number of the study, one a line. */
final class Figures {
  private static final CSVFormat LINES =
      CSVFormat.DEFAULT
          .builder()
          .setHeader("table", "families", "subject", "case", "quantity", "value")
          .setRecordSeparator('\n')
          .get();

  private Figures() {}

  /**
   * One number.
   *
   * @param table which of the study's questions it answers
   * @param families the group of families that were run together
   * @param subject the first cell of its row, mostly the family
   * @param of the second cell of its row, mostly how the clinic measures
   * @param quantity what it is, with its unit
   * @param value as it was printed, with a decimal point
   */
  record Figure(
      String table, String families, String subject, String of, String quantity, String value) {}

  static List<Figure> read(Path file) throws IOException {
    try (Reader reader = Files.newBufferedReader(file)) {
      CSVFormat skipping = LINES.builder().setSkipHeaderRecord(true).get();
      return skipping.parse(reader).stream().map(Figures::figure).toList();
    }
  }

  private static Figure figure(CSVRecord line) {
    return new Figure(line.get(0), line.get(1), line.get(2), line.get(3), line.get(4), line.get(5));
  }

  /** Puts a table's numbers in place of those of the same name and families. */
  static void put(Path file, String name, String families, Table table) throws IOException {
    List<Figure> figures = new ArrayList<>();
    if (Files.exists(file)) {
      figures.addAll(read(file));
    }
    figures.removeIf(f -> f.table().equals(name) && f.families().equals(families));
    for (List<String> row : table.rows()) {
      for (int i = 2; i < row.size(); i++) {
        String quantity = table.head().get(i);
        figures.add(new Figure(name, families, row.get(0), row.get(1), quantity, row.get(i)));
      }
    }
    write(file, figures);
  }

  private static void write(Path file, List<Figure> figures) throws IOException {
    try (Writer writer = Files.newBufferedWriter(file);
        CSVPrinter printer = LINES.print(writer)) {
      for (Figure f : figures) {
        printer.printRecord(f.table(), f.families(), f.subject(), f.of(), f.quantity(), f.value());
      }
    }
  }
}
