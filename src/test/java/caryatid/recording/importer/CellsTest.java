package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * Cells that are no plain number: missing ones, parted thousands, text; and what to do about them.
 */
class CellsTest {
  private static final String UNITS = "Fz (N),CoPx (mm),CoPy (mm)";
  private static final PlateDescription UNTIMED = new Described().rate(100).get();
  private static final PlateDescription TIMED = new Described().get();

  /** A horizontal force, which no person's weight bounds. */
  private static double force(String cell) throws BadInput {
    String row = "\n" + cell + ";0.5;800;1.5;2";
    String names = "Fx (N);Fy (N);Fz (N);CoPx (mm);CoPy (mm)";
    NamedBytes export = Exports.text(names + row + row + row + "\n");
    return Exports.readAt100Hz(export).plates().get(0).horizontal().orElseThrow().rightN().at(1);
  }

  private static PlateDescription mark(char mark) {
    return new Described()
        .rate(100)
        .form(
            new ExportLayout(
                Optional.empty(),
                Optional.empty(),
                Optional.of(mark),
                OptionalInt.empty(),
                OptionalInt.empty(),
                List.of(),
                OptionalInt.empty()))
        .get();
  }

  @Test
  void howAMissingNumberIsWritten() throws BadInput {
    for (String missing :
        List.of("", "NaN", "-nan(ind)", "N/A", "n/a", "null", "NULL", "-", "--", "---", "inf")) {
      Recording recording =
          Exports.readAt100Hz(Exports.of(UNITS, "800,1,2", "801," + missing + ",2", "802,1,2"));
      assertThat(recording.plates().get(0).usable().count()).as(missing).isEqualTo(2);
    }
  }

  /** Without times a row that is left out would move all that follow it. */
  @Test
  void aRowThatLacksEveryNumberKeepsItsPlace() throws BadInput {
    Recording inside =
        Exports.readAt100Hz(
            Exports.of(UNITS, "800,1,2", "801,1,2", "NaN,NaN,NaN", "803,1,2", "804,1,2"));
    assertThat(inside.timeS().size()).isEqualTo(5);
    assertThat(inside.plates().get(0).upN().orElseThrow().at(3)).isEqualTo(803);
    Recording first = Exports.readAt100Hz(Exports.of(UNITS, "NaN,NaN,NaN", "801,1,2", "802,1,2"));
    assertThat(first.timeS().size()).isEqualTo(3);
  }

  @Test
  void aCellOfTextIsToBeEmptied() {
    assertThat(Exports.refusals(Exports.of(UNITS, "800,1,2", "80x,1,2", "800,1,2"), UNTIMED))
        .containsExactly(
            "stand.csv line 3, column Fz (N): expected a number, found '80x'. Empty the cell or"
                + " export again.");
  }

  @Test
  void aRaggedRowIsNotToBeDeletedWithoutTimes() {
    assertThat(Exports.refusals(Exports.of(UNITS, "800,1,2", "800,1", "800,1,2"), UNTIMED))
        .containsExactly(
            "stand.csv line 3: expected 3 cells, found 2. Export again; there are no times, so"
                + " deleting the row would shift all that follow it.");
    assertThat(
            Exports.refusals(
                Exports.of("Frame," + UNITS, "1,800,1,2", "2,800,1", "3,800,1,2"), UNTIMED))
        .containsExactly(
            "stand.csv line 3: expected 4 cells, found 3. Delete the row or export again.");
  }

  @Test
  void ofALongOrUnprintableCellAnExcerptIsShown() {
    assertThat(
            Exports.refusals(Exports.of(UNITS, "800,1,2", "800,1," + "x".repeat(9_999)), UNTIMED))
        .containsExactly(
            "stand.csv line 3, column CoPy (mm): expected a number, found '"
                + "x".repeat(37)
                + "...'. Empty the cell or export again.");
    assertThat(Exports.refusals(Exports.of(UNITS, "800,1,2", "800,1,2\u00074"), UNTIMED))
        .containsExactly(
            "stand.csv line 3, column CoPy (mm): expected a number, found '2\uFFFD4'. Empty the"
                + " cell or export again.");
  }

  /** A decimal comma in one cell would else move all behind it into the wrong columns. */
  @Test
  void delimitersBehindTheRowsHideNoFurtherCell() {
    String rows = "800,1,2,\n".repeat(200);
    assertThat(Exports.refusals(Exports.text(UNITS + ",\n" + rows + "800,5,1,2\n" + rows), UNTIMED))
        .containsExactly(
            "stand.csv line 202: expected 3 cells, found 4. Export again; there are no times, so"
                + " deleting the row would shift all that follow it.");
  }

  @Test
  void thousandsThatCanBeNothingElseAreRead() throws BadInput {
    assertThat(force("1,234.5")).isEqualTo(1234.5);
    assertThat(force("1,234,567")).isEqualTo(1_234_567);
    NamedBytes comma = Exports.text("Fz (N);CoPx (mm);CoPy (mm)\n" + "1.234,5;1,5;2\n".repeat(3));
    assertThat(Exports.readAt100Hz(comma).plates().get(0).upN().orElseThrow().at(1))
        .isEqualTo(1234.5);
  }

  /** Thousands may come first far below: under load. */
  @Test
  void thousandsThatComeLateAreRead() throws BadInput {
    NamedBytes export =
        Exports.text(
            "Fz (N);CoPx (mm);CoPy (mm)\n"
                + "999.5;1;2\n".repeat(200)
                + "1,000.5;1;2\n999.5;1;2\n");
    assertThat(Exports.readAt100Hz(export).plates().get(0).upN().orElseThrow().at(200))
        .isEqualTo(1000.5);
  }

  /** The other cells cannot be judged as long as the mark is in question. */
  @Test
  void whileTheDecimalMarkIsInQuestionNothingElseIsSaidOfIt() {
    String rows = "0.01;1,200;20.54;2.5\n0.02;1,201;20.55;2.5\n".repeat(30);
    assertThat(
            Exports.refusals(Exports.text("Time;" + UNITS.replace(',', ';') + "\n" + rows), TIMED))
        .singleElement()
        .asString()
        .contains("may be decimal marks or thousands separators");
    Inspection seen =
        Importer.inspect(
            Exports.text("Time;" + UNITS.replace(',', ';') + "\n" + rows), Optional.of(TIMED));
    assertThat(seen.plates()).isEmpty();
  }

  /** The answers that the question offers are both taken. */
  @Test
  void commasThatMayPartThousandsAreReadAsTheDescriptionSays() throws BadInput {
    NamedBytes export =
        Exports.text("Fz (N);CoPx (mm);CoPy (mm)\n" + "1,800;1.250;2\n999.5;1.251;3\n".repeat(3));
    assertThat(Exports.refusals(export, UNTIMED))
        .anyMatch(s -> s.contains("may be decimal marks or thousands separators"));
    Recording parted = Exports.read(export, mark('.'));
    assertThat(parted.plates().get(0).upN().orElseThrow().at(0)).isEqualTo(1800);
    assertThat(parted.plates().get(0).upN().orElseThrow().at(1)).isEqualTo(999.5);
    NamedBytes decimals =
        Exports.text("Fz (N);CoPx (mm);CoPy (mm)\n" + "800,125;1,250;2\n".repeat(3));
    assertThat(Exports.read(decimals, mark(',')).plates().get(0).upN().orElseThrow().at(0))
        .isEqualTo(800.125);
  }

  /** A comma that comes late and may be either is not read. */
  @Test
  void aLateCommaThatMayBeEitherIsRefused() {
    NamedBytes export =
        Exports.text("Fz (N);CoPx (mm);CoPy (mm)\n" + "999.5;1;2\n".repeat(200) + "1,000;1;2\n");
    assertThat(Exports.refusals(export, UNTIMED))
        .containsExactly(
            "stand.csv line 202, column Fz (N): expected a point as decimal mark as in the other"
                + " rows, found '1,000'. Correct the cell or export again.");
  }

  private static NamedBytes clock(String... times) {
    StringBuilder text = new StringBuilder("Time," + UNITS + "\n");
    int force = 800;
    for (String time : times) {
      text.append(time).append(',').append(force++).append(",1,2\n");
    }
    return Exports.text(text.toString());
  }

  @Test
  void aTwelveHourClockIsRead() throws BadInput {
    for (String[] times :
        List.of(
            new String[] {"11:59:59.98 AM", "11:59:59.99 AM", "12:00:00.00 PM", "12:00:00.01 PM"},
            new String[] {"12:59:59.98 pm", "12:59:59.99 pm", "1:00:00.00 pm", "1:00:00.01 pm"},
            new String[] {"11:59:59.98PM", "11:59:59.99PM", "12:00:00.00AM", "12:00:00.01AM"},
            new String[] {
              "3/4/2026 9:15:01.00 AM",
              "3/4/2026 9:15:01.01 AM",
              "3/4/2026 9:15:01.02 AM",
              "3/4/2026 9:15:01.03 AM"
            },
            new String[] {
              "04.03.2026 23:59:59.98",
              "04.03.2026 23:59:59.99",
              "05.03.2026 00:00:00.00",
              "05.03.2026 00:00:00.01"
            })) {
      assertThat(Exports.read(clock(times), TIMED).rateHz())
          .as(times[0])
          .isCloseTo(100, org.assertj.core.api.Assertions.within(1e-4));
    }
  }

  /** One message for a column, not one for each row. */
  @Test
  void timesThatCannotBeReadAreSaidOnce() throws BadInput {
    String[] times = new String[60];
    java.util.Arrays.setAll(times, i -> "13:15:%02d PM".formatted(i));
    assertThat(Exports.refusals(clock(times), TIMED))
        .containsExactly(
            "stand.csv line 2, column Time: expected times as numbers or as in 10:15:01.250"
                + " or 9:15:01 AM, found '13:15:00 PM', and no other in the rows below. Export the"
                + " times in seconds, or say the rate in the plate description, in Hz for unknown:"
                + " time: {rate-hz: unknown}");
    assertThat(Exports.read(clock(times), UNTIMED).timeS().size()).isEqualTo(60);
  }

  @Test
  void aSingleTimeThatCannotBeReadIsNamed() {
    assertThat(Exports.refusals(clock("10:00:00.00", "10:00:0x", "10:00:00.02"), TIMED))
        .containsExactly(
            "stand.csv line 3, column Time: expected a time, found '10:00:0x'. Delete the row or"
                + " export again.");
  }

  @Test
  void aSampleNumberThatCannotBeReadIsNamed() {
    assertThat(
            Exports.refusals(
                Exports.of("Frame," + UNITS, "1,800,1,2", "2x,800,1,2", "3,800,1,2"), UNTIMED))
        .containsExactly(
            "stand.csv line 3, column Frame: expected a sample number, found '2x'. Delete the row"
                + " or export again.");
  }
}
