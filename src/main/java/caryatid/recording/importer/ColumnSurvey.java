package caryatid.recording.importer;

import caryatid.recording.model.ColumnView;
import caryatid.recording.model.ColumnView.ByName;
import caryatid.recording.model.ColumnView.ByNumbers;
import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.table.ColumnMapping;
import caryatid.recording.table.ColumnMeaning;
import caryatid.recording.table.ColumnName;
import caryatid.recording.table.ExportText;
import caryatid.recording.table.HeaderBlock;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/** What each column of an export's table is like, whatever it is used for. */
final class ColumnSurvey {
  /** A person's weight on a plate, N: 20 to 250 kg (common practice, no source). */
  private static final double LIGHTEST_N = 200;

  private static final double HEAVIEST_N = 2500;

  /** The same in kg, and one foot's share of it. */
  private static final double LIGHTEST_KG = 20;

  /** A standing person's force varies by less; one foot's share may vary by more. */
  private static final double NEARLY_CONSTANT = 0.15;

  private ColumnSurvey() {}

  /** The columns of the table with the most of known names, else of the longest. */
  static List<ColumnView> of(NamedBytes export, ExportLayout layout) {
    List<ParsedTable> tables =
        WorkbookFile.of(export)
            .map(book -> book.tables(layout, ColumnSurvey::everything).all())
            .orElseGet(
                () -> new ExportText(export, layout, ColumnSurvey::everything).read().value());
    return tables.stream()
        .max(Comparator.comparingLong(ColumnSurvey::known).thenComparing(ParsedTable::rows))
        .map(ColumnSurvey::views)
        .orElse(List.of());
  }

  private static long known(ParsedTable table) {
    return ColumnMeaning.of(table.head().columns()).stream()
        .filter(r -> r.channel().isPresent())
        .count();
  }

  /** A plan that reads all columns of numbers. */
  private static ColumnMapping everything(HeaderBlock head) {
    Map<String, Integer> columns = new LinkedHashMap<>();
    IntStream.range(0, head.columns().size())
        .filter(head::numeric)
        .forEach(i -> columns.put(Integer.toString(i), i));
    PlateColumns all = new PlateColumns(PlateColumns.bare("all"), Map.of(), columns, Set.of());
    return new ColumnMapping(OptionalInt.empty(), OptionalInt.empty(), List.of(all), List.of());
  }

  /** The columns of a table. */
  static List<ColumnView> views(ParsedTable table) {
    List<ColumnMeaning> meanings = ColumnMeaning.of(table.head().columns());
    List<ColumnView> views = new ArrayList<>();
    for (int i = 0; i < meanings.size(); i++) {
      views.add(view(table, i, meanings.get(i)));
    }
    return List.copyOf(views);
  }

  private static ColumnView view(ParsedTable table, int index, ColumnMeaning meaning) {
    ColumnName name = table.head().columns().get(index);
    int at = index;
    List<String> first =
        table.head().firstRows().stream().map(row -> at < row.size() ? row.get(at) : "").toList();
    double[] numbers = numbers(table, index);
    double[] loaded = loaded(numbers);
    ByNumbers byNumbers = numbers.length == 0 ? ByNumbers.TEXT : byNumbers(numbers, loaded);
    // What is known by nothing is told as it is, with what an empty plate shows.
    double[] told =
        byNumbers == ByNumbers.UNKNOWN ? Arrays.stream(numbers).sorted().toArray() : loaded;
    return new ColumnView(
        index + 1,
        name.full(),
        first,
        byName(meaning),
        meaning.channel(),
        byNumbers,
        part(told, 0.1),
        part(told, 0.9));
  }

  private static ByName byName(ColumnMeaning meaning) {
    return switch (meaning.kind()) {
      case TIME -> ByName.TIME;
      case INDEX -> ByName.NUMBER;
      case CHANNEL -> ByName.CHANNEL;
      case DERIVED -> ByName.DERIVED;
      case OTHER -> ByName.NOTHING;
    };
  }

  private static double[] numbers(ParsedTable table, int index) {
    NumberColumn column = table.columns().get(index);
    return column == null
        ? new double[0]
        : IntStream.range(0, column.size())
            .filter(row -> !column.isHole(row))
            .mapToDouble(column::at)
            .toArray();
  }

  private static ByNumbers byNumbers(double[] numbers, double[] loaded) {
    if (Arrays.stream(numbers).allMatch(n -> n == numbers[0])) {
      return ByNumbers.CONSTANT;
    }
    if (rises(numbers)) {
      return ByNumbers.RISING;
    }
    double middle = Math.abs(part(loaded, 0.5));
    boolean steady = part(loaded, 0.9) - part(loaded, 0.1) <= NEARLY_CONSTANT * middle;
    if (steady && middle >= LIGHTEST_N && middle <= HEAVIEST_N) {
      return ByNumbers.WEIGHT_N;
    }
    return steady && middle >= LIGHTEST_KG && middle < LIGHTEST_N
        ? ByNumbers.WEIGHT_KG
        : ByNumbers.UNKNOWN;
  }

  private static boolean rises(double[] numbers) {
    int last = numbers.length - 1;
    double step = (numbers[last] - numbers[0]) / Math.max(1, last);
    return step > 0
        && last > 1
        && IntStream.range(0, last)
            .allMatch(i -> Math.abs(numbers[i + 1] - numbers[i] - step) <= 0.6 * step);
  }

  /** The numbers that are not near zero, as those of an empty plate are, in order of size. */
  private static double[] loaded(double[] numbers) {
    double[] sizes = Arrays.stream(numbers).map(Math::abs).sorted().toArray();
    double large = part(sizes, 0.95);
    return Arrays.stream(numbers).filter(n -> Math.abs(n) >= large / 2).sorted().toArray();
  }

  private static double part(double[] sorted, double share) {
    return sorted.length == 0 ? 0 : sorted[(int) (share * (sorted.length - 1))];
  }
}
