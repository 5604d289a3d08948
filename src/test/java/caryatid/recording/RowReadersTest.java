package caryatid.recording;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
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

  private static Table table(Dialect dialect) {
    List<ColumnName> columns = new ArrayList<>();
    for (String name : List.of("Time", "other", "Fz", "CoPx", "CoPy")) {
      columns.add(ColumnName.of("", name));
    }
    Head head =
        new Head(
            List.of(),
            1,
            OptionalInt.of(1),
            OptionalInt.empty(),
            OptionalInt.empty(),
            columns,
            2,
            dialect);
    return new Table(head, new Planner("test", Optional.empty()).plan(head));
  }

  /** 20,000 rows a delimiter with odd cells among plain ones, always the same ones. */
  @ParameterizedTest
  @EnumSource(Delimiter.class)
  void bothReadersReadTheSameNumbers(Delimiter delimiter) {
    Random random = new Random(20260304);
    int fastRows = 0;
    for (int i = 0; i < 20_000; i++) {
      DecimalMark mark =
          delimiter != Delimiter.COMMA && random.nextBoolean()
              ? DecimalMark.COMMA
              : DecimalMark.POINT;
      List<String> cells = new ArrayList<>();
      for (int c = 0; c < 5; c++) {
        cells.add(cell(random).replace('.', mark.character()));
      }
      String line = String.join(String.valueOf(delimiter.character()), cells);
      Table fast = table(new Dialect(delimiter, mark));
      Table careful = table(new Dialect(delimiter, mark));
      byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
      if (new FastRow(fast).read(bytes, 0, bytes.length)) {
        fastRows++;
        Notebook notes = new Notebook("test");
        assertThat(new CarefulRow(careful, notes).read(line, 2, true))
            .as(line)
            .isEqualTo(CarefulRow.Outcome.ROW);
        assertThat(notes.problems()).as(line).isEmpty();
        assertThat(taken(fast)).as(line).isEqualTo(taken(careful));
      }
    }
    assertThat(fastRows).isBetween(8_000, 19_000);
  }

  private static List<Double> taken(Table table) {
    return table.columns().values().stream().map(c -> c.at(0)).toList();
  }

  /** Against {@link Double#parseDouble}, which is correctly rounded. */
  @Test
  void numbersAreRoundedCorrectly() {
    Random random = new Random(20260305);
    NumberBytes numbers = new NumberBytes(DecimalMark.POINT);
    for (int i = 0; i < 200_000; i++) {
      String text = number(random);
      byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
      assertThat(numbers.read(bytes, 0, bytes.length)).as(text).isTrue();
      if (Double.doubleToRawLongBits(numbers.value())
          != Double.doubleToRawLongBits(Double.parseDouble(text))) {
        assertThat(numbers.value()).as(text).isEqualTo(Double.parseDouble(text));
      }
    }
  }

  @Test
  void whatIsNoPlainNumberIsLeftToTheOtherReader() {
    NumberBytes numbers = new NumberBytes(DecimalMark.POINT);
    for (String text :
        List.of("", "-", ".", "1e", "1e+", "e5", "0x10", "1_0", "1,5", "NaN", "1e400", "1d")) {
      byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
      assertThat(numbers.read(bytes, 0, bytes.length)).as(text).isFalse();
    }
  }
}
