package caryatid.recording.table;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.track.ColumnMapper;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Validation: the fast reader of rows against the CSV library and the JDK's own number parser. */
class RowReadersTest {
  private static final String[] ODDITIES = {
    "1",
    "-0.00",
    "+.5",
    "7.",
    "1e3",
    "-2.5E-7",
    "123456789012345678901",
    "0.1234567890123456789",
    "9007199254740993",
    "1e400",
    "4.9e-324",
    "",
    " ",
    "NaN",
    "\"3\"",
    "\"4",
    "n/a",
    "1 2",
    "--1",
    "1e",
    "e5",
    "0x10",
    "1_000",
    "\t8",
    "9\t",
    "1.5.2",
    "Infinity",
    "1d",
    "1f"
  };

  private static String number(Random random) {
    double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(12) - 4);
    return switch (random.nextInt(4)) {
      case 0 -> Double.toString(value);
      case 1 -> String.format(java.util.Locale.ROOT, "%.6f", value);
      case 2 -> String.format(java.util.Locale.ROOT, "%e", value);
      default -> Long.toString((long) value);
    };
  }

  private static String cell(Random random) {
    return random.nextInt(12) == 0 ? ODDITIES[random.nextInt(ODDITIES.length)] : number(random);
  }

  private static GrowingTable table(Dialect dialect) {
    return table(dialect, 0);
  }

  /**
   * @param turn how many of the first names stand behind the others
   */
  private static GrowingTable table(Dialect dialect, int turn) {
    List<ColumnName> columns = new ArrayList<>();
    for (String name : List.of("Time", "other", "Fz", "CoPx", "CoPy")) {
      columns.add(ColumnName.of("", name));
    }
    Collections.rotate(columns, -turn);
    HeaderBlock head =
        new HeaderBlock(
            List.of(),
            1,
            OptionalInt.of(1),
            OptionalInt.empty(),
            OptionalInt.empty(),
            columns,
            2,
            dialect,
            "",
            List.of());
    return new GrowingTable(head, new ColumnMapper("test", Optional.empty()).map(head));
  }

  /**
   * 20,000 rows a delimiter, the unwanted cell in every place, with odd cells among plain ones,
   * always the same ones.
   */
  @ParameterizedTest
  @EnumSource(Delimiter.class)
  void bothReadersReadTheSameNumbers(Delimiter delimiter) {
    int plain = 0;
    for (int turn = 0; turn < 5; turn++) {
      plain += compared(new Dialect(delimiter, DecimalMark.POINT), turn, 2_000);
      if (delimiter != Delimiter.COMMA) {
        plain += compared(new Dialect(delimiter, DecimalMark.COMMA), turn, 2_000);
      }
    }
    assertThat(plain).isGreaterThan(4_000);
  }

  /** How many of so many rows the fast reader took; those it took, both must read alike. */
  private static int compared(Dialect dialect, int turn, int rows) {
    Random random = new Random(20260304);
    GrowingTable fast = table(dialect, turn);
    GrowingTable careful = table(dialect, turn);
    FastRow fastRow = new FastRow(fast, (byte) '\n');
    StageMessages nothing = StageMessages.none("test");
    CarefulRow carefulRow =
        new CarefulRow(careful, new TruncatedCellCheck(List.of(), dialect), nothing);
    List<String> taken = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      String line = line(random, dialect);
      byte[] bytes = (line + ends(random) + "\n").getBytes(StandardCharsets.UTF_8);
      int past = fastRow.read(bytes, 0, bytes.length - 1);
      if (past != FastRow.NOT_PLAIN) {
        assertThat(past).isEqualTo(bytes.length - 1);
        assertThat(carefulRow.read(line, 2, true))
            .as(line)
            .isEqualTo(new Outcome<>(CarefulRow.LineKind.ROW, nothing));
        taken.add(line);
      }
    }
    ParsedTable one = fast.grown();
    ParsedTable other = careful.grown();
    for (int row = 0; row < taken.size(); row++) {
      assertThat(numbers(one, row)).as(taken.get(row)).isEqualTo(numbers(other, row));
    }
    return taken.size();
  }

  private static String ends(Random random) {
    return random.nextBoolean() ? "\n" : "\r\n";
  }

  private static String line(Random random, Dialect dialect) {
    List<String> cells = new ArrayList<>();
    for (int c = 0; c < 5; c++) {
      cells.add(cell(random).replace('.', dialect.mark().character()));
    }
    return String.join(String.valueOf(dialect.delimiter().character()), cells);
  }

  private static List<Double> numbers(ParsedTable table, int row) {
    return table.columns().values().stream().map(c -> c.at(row)).toList();
  }

  /** Against {@link Double#parseDouble}, which is correctly rounded. */
  @Test
  void numbersAreRoundedCorrectly() {
    Random random = new Random(20260305);
    GrowingTable table = table(new Dialect(Delimiter.COMMA, DecimalMark.POINT));
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < 50_000; i++) {
      String text = number(random);
      assertThat(read(table, text + ",x,0,0,0\n\n", 1)).as(text).isPositive();
      texts.add(text);
    }
    ParsedTable grown = table.grown();
    for (int row = 0; row < texts.size(); row++) {
      String text = texts.get(row);
      assertThat(grown.column(0).at(row)).as(text).isEqualTo(Double.parseDouble(text));
    }
  }

  @Test
  void whatIsNoPlainNumberIsLeftToTheOtherReader() {
    for (String text :
        List.of("", "-", ".", "1e", "1e+", "e5", "0x10", "1_0", "1,5", "NaN", "1e400", "1d")) {
      GrowingTable table = table(new Dialect(Delimiter.SEMICOLON, DecimalMark.POINT));
      assertThat(read(table, text + ";x;0;0;0\n\n", 1)).as(text).isEqualTo(FastRow.NOT_PLAIN);
      assertThat(table.columns().get(0).size()).isZero();
    }
  }

  /** Else a row that lacks a cell and ends with a blank would be read one cell too far left. */
  @Test
  void betweenBlanksNoCellIsEmpty() {
    GrowingTable table = table(new Dialect(Delimiter.BLANK, DecimalMark.POINT), 2);
    assertThat(read(table, "1 2 3 0.01 \n\n", 1)).isEqualTo(FastRow.NOT_PLAIN);
    assertThat(read(table, "1 2 3 0.01 x \n\n", 1)).isEqualTo(14);
    assertThat(table.columns().get(0).size()).isEqualTo(1);
  }

  @Test
  void beyondTheLastColumnOnlyEmptyCellsAreRead() {
    GrowingTable table = table(new Dialect(Delimiter.COMMA, DecimalMark.POINT));
    assertThat(read(table, "1,x,0,0,12,\n\n", 1)).isEqualTo(12);
    assertThat(read(table, "1,x,0,0,12 , ,\r\n\n", 1)).isEqualTo(16);
    assertThat(read(table, "1,x,0,0,12,,3\n\n", 1)).isEqualTo(FastRow.NOT_PLAIN);
    assertThat(read(table, "1,x,0,0,12,\n", 1)).isEqualTo(FastRow.NOT_PLAIN);
    assertThat(table.columns().get(0).size()).isEqualTo(2);
  }

  @Test
  void aRowThatMayGoOnBeyondTheBufferIsLeftToTheOtherReader() {
    GrowingTable table = table(new Dialect(Delimiter.COMMA, DecimalMark.POINT));
    assertThat(read(table, "1,x,0,0,12\n", 1)).isEqualTo(FastRow.NOT_PLAIN);
    assertThat(read(table, "1,x,0,0,12\r\n", 1)).isEqualTo(FastRow.NOT_PLAIN);
    assertThat(read(table, "1,x,0,0,12\n\n", 1)).isEqualTo(11);
    assertThat(table.columns().get(0).size()).isEqualTo(1);
  }

  /** Reads a row, the last bytes of the text lying beyond what is known. */
  private static int read(GrowingTable table, String text, int beyond) {
    byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
    return new FastRow(table, (byte) '\n').read(bytes, 0, bytes.length - beyond);
  }
}
