package caryatid.recording.table;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.track.ColumnMapper;
import caryatid.remark.Argument;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Validation: what is read by way of the buffer against {@link CarefulRow}, line by line. */
class RowsOverBordersTest {
  private static final List<String> NAMES = List.of("Time", "other", "Fz", "CoPx", "CoPy");
  private static final StageMessages NOTHING = StageMessages.none("test");
  private static final String[] ODD = {"", "NaN", "1.5e3", "12345678901234567.5", " 7 ", "\"8\""};

  /** Gives a text in portions, so that the known part of the buffer ends wherever one does. */
  private static final class Portions extends InputStream {
    private final InputStream all;
    private final IntUnaryOperator next;

    Portions(byte[] bytes, IntUnaryOperator next) {
      this.all = new ByteArrayInputStream(bytes);
      this.next = next;
    }

    @Override
    public int read() throws IOException {
      return all.read();
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
      return all.read(into, from, Math.min(length, next.applyAsInt(length)));
    }
  }

  private static List<String> lines(Random random, Delimiter delimiter, int rows) {
    String between = String.valueOf(delimiter.character());
    List<String> lines = new ArrayList<>();
    lines.add(String.join(between, NAMES));
    for (int i = 0; i < rows; i++) {
      List<String> cells = new ArrayList<>(List.of(String.format(Locale.ROOT, "%.3f", i * 0.001)));
      for (int c = 1; c < NAMES.size(); c++) {
        boolean odd = delimiter != Delimiter.BLANK && random.nextInt(30) == 0;
        String number = String.format(Locale.ROOT, "%.4f", random.nextGaussian() * 100);
        cells.add(odd ? ODD[random.nextInt(ODD.length)] : number);
      }
      lines.add(String.join(between, cells));
    }
    return lines;
  }

  private static String joined(List<String> lines, String end) {
    return String.join(end, lines) + end;
  }

  private static Outcome<List<ParsedTable>> read(
      String text, String end, IntUnaryOperator portion) {
    byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
    return new TableReader(
            new LineReader(
                new Portions(bytes, portion),
                StandardCharsets.US_ASCII,
                (byte) end.charAt(end.length() - 1)),
            ExportLayout.UNSTATED,
            new ColumnMapper("test", Optional.empty())::map,
            NOTHING)
        .read();
  }

  private static void holds(List<String> lines, String end, IntUnaryOperator portion) {
    Outcome<List<ParsedTable>> outcome = read(joined(lines, end), end, portion);
    assertThat(outcome.messages()).isEqualTo(NOTHING);
    assertThat(outcome.value()).hasSize(1);
    ParsedTable read = outcome.value().get(0);
    ParsedTable expected = byLine(read, lines);
    assertThat(read.rows()).isEqualTo(lines.size() - 1).isEqualTo(expected.rows());
    read.columns().forEach((index, column) -> alike(column, expected.column(index)));
    assertThat(IntStream.range(0, read.rows()).allMatch(row -> read.lines().line(row) == row + 2))
        .isTrue();
  }

  private static ParsedTable byLine(ParsedTable read, List<String> lines) {
    GrowingTable expected = new GrowingTable(read.head(), read.mapping());
    TruncatedCellCheck cut = new TruncatedCellCheck(List.of(), read.head().dialect());
    CarefulRow careful = new CarefulRow(expected, cut, NOTHING);
    for (int i = 1; i < lines.size(); i++) {
      assertThat(careful.read(lines.get(i), i + 1, true).messages()).isEqualTo(NOTHING);
    }
    return expected.grown();
  }

  private static void alike(NumberColumn read, NumberColumn expected) {
    assertThat(holes(read)).isEqualTo(holes(expected));
    assertThat(numbers(read)).isEqualTo(numbers(expected));
  }

  private static BitSet holes(NumberColumn column) {
    BitSet holes = new BitSet();
    column.addHolesTo(holes);
    return holes;
  }

  private static double[] numbers(NumberColumn column) {
    return IntStream.range(0, column.size()).mapToDouble(column::at).toArray();
  }

  @ParameterizedTest
  @EnumSource(Delimiter.class)
  void everyByteOfARowCanBeTheLastOneKnown(Delimiter delimiter) {
    Random random = new Random(20260306);
    List<String> lines = lines(random, delimiter, 600);
    for (String end : List.of("\n", "\r\n", "\r", "\r\r\n")) {
      for (int size = 1; size <= 80; size += 7) {
        int portion = size;
        holds(lines, end, length -> portion);
      }
      holds(lines, end, length -> 1 + random.nextInt(200));
    }
  }

  /** The buffer's own end, with a row moved over it byte by byte. */
  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void everyByteOfARowCanBeTheBuffersLast(String end) {
    List<String> lines = lines(new Random(20260307), Delimiter.COMMA, 6_500);
    int row = lines.get(5_000).length() + end.length();
    for (int shift = 0; shift <= row; shift++) {
      List<String> shifted = new ArrayList<>(lines);
      shifted.set(1, " ".repeat(shift) + lines.get(1));
      holds(shifted, end, length -> length);
    }
  }

  @Test
  void aRowLongerThanTheBufferIsRead() {
    List<String> lines = lines(new Random(20260308), Delimiter.SEMICOLON, 9_000);
    for (int blanks : List.of(1 << 17, (1 << 18) - 60, 1 << 18, 300_000, 900_000)) {
      List<String> longer = new ArrayList<>(lines);
      longer.set(4_000, lines.get(4_000).replaceFirst(";", ";" + " ".repeat(blanks)));
      holds(longer, "\n", length -> length);
      holds(longer, "\r\n", length -> 50_000);
    }
  }

  @Test
  void aLineThatIsNoRowOfAnExportIsRefused() {
    List<String> lines = lines(new Random(20260309), Delimiter.COMMA, 500);
    lines.set(400, lines.get(400) + " ".repeat(2 * LineReader.LONGEST));
    Outcome<List<ParsedTable>> outcome = read(joined(lines, "\n"), "\n", length -> length);
    assertThat(outcome.value()).isEmpty();
    assertThat(outcome.messages())
        .isEqualTo(
            NOTHING.withProblem(ImportProblem.LINE_TOO_LONG, Argument.count(LineReader.LONGEST)));
  }

  /** A column's numbers are kept in pieces of 32,768. */
  @ParameterizedTest
  @ValueSource(ints = {32_767, 32_768, 32_769, 65_536})
  void aColumnMayEndAnywhereInItsPieces(int rows) {
    holds(lines(new Random(20260310), Delimiter.TAB, rows), "\n", length -> length);
  }
}
