package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Recording;
import caryatid.recording.model.UsableMask;
import caryatid.remark.BadInput;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** How times become even: rounded, doubled, missing, running back. Validation by construction. */
class TimesTest {
  private static final double EXACT = 1e-9;

  private static NamedBytes export(int rows, String format, IntToDoubleFunction time) {
    StringBuilder text = new StringBuilder("Time (s),Fz (N),CoPx (mm),CoPy (mm)\n");
    for (int i = 0; i < rows; i++) {
      text.append(String.format(Locale.ROOT, format, time.applyAsDouble(i)))
          .append(",")
          .append(800 + i % 7)
          .append(i % 2 == 0 ? ",1,2\n" : ",2,3\n");
    }
    return Exports.text(text.toString());
  }

  private static Recording read(NamedBytes export) throws BadInput {
    return Exports.read(export, new Described().get());
  }

  private static String rows(String header, IntToDoubleFunction time) {
    StringBuilder text = new StringBuilder(header + "\n");
    for (int i = 0; i < 101; i++) {
      text.append(time.applyAsDouble(i))
          .append(",")
          .append(800 + i % 7)
          .append(",1,")
          .append(i % 5);
      text.append("\n");
    }
    return text.toString();
  }

  @Test
  void theRateIsAllStepsOverTheWholeTime() throws BadInput {
    Recording recording = read(export(101, "%.3f", i -> 5 + i / 50.0));
    assertThat(recording.rateHz()).isCloseTo(50, within(EXACT));
    assertThat(recording.timeS().at(0)).isZero();
    assertThat(recording.timeS().at(100)).isCloseTo(2, within(EXACT));
  }

  @Test
  void aDescribedRateThatTheTimesContradictIsRefused() throws BadInput {
    NamedBytes export = export(101, "%.3f", i -> i / 50.0);
    assertThat(Exports.refusals(export, new Described().rate(100).get()))
        .containsExactly(
            "stand.csv, column Time (s): the plate description gives the rate as 100.0 Hz, but the"
                + " file shows 50.0 Hz here. Correct rate-hz in the description, or leave it out.");
    assertThat(Exports.read(export, new Described().rate(50.4).get()).rateHz()).isEqualTo(50.4);
    assertThat(Exports.refusals(export, new Described().rate(50.6).get())).hasSize(1);
  }

  /** Two Time columns of the same steps without a unit: 0.02 s make 50 Hz and nothing else. */
  @Test
  void timesWithoutAUnitContradictARateToo() throws BadInput {
    NamedBytes export = Exports.text(rows("Time,Fz (N),CoPx (mm),CoPy (mm)", i -> i / 50.0));
    assertThat(Exports.read(export, new Described().rate(50).get()).rateHz()).isEqualTo(50);
    assertThat(Exports.refusals(export, new Described().rate(1000).get()))
        .containsExactly(
            "stand.csv, column Time: the plate description gives the rate as 1000.0 Hz, but the"
                + " file shows 50.0 Hz here. Correct rate-hz in the description, or leave it out.");
  }

  /** The samples' numbers in a column called Time are no times. */
  @Test
  void aColumnThatCountsContradictsNoRate() throws BadInput {
    NamedBytes export = Exports.text(rows("Time,Fz (N),CoPx (mm),CoPy (mm)", i -> i));
    assertThat(Exports.read(export, new Described().rate(100).get()).rateHz()).isEqualTo(100);
  }

  @Test
  void aDescribedRateThatTheLinesAboveContradictIsRefused() throws BadInput {
    String rows = "Fz (N),CoPx (mm),CoPy (mm)\n" + "800,1,2\n801,1,3\n".repeat(20);
    NamedBytes export = Exports.text("Sampling rate,200\n" + rows);
    assertThat(Exports.refusals(export, new Described().rate(100).get()))
        .containsExactly(
            "stand.csv line 1: the plate description gives the rate as 100.0 Hz, but the file shows"
                + " 200.0 Hz here. Correct rate-hz in the description, or leave it out.");
    assertThat(Exports.read(export, new Described().rate(200).get()).rateHz()).isEqualTo(200);
  }

  /** A plate is often sampled several times a frame. */
  @Test
  void aMultipleOfARateOfFramesDoesNotContradictIt() throws BadInput {
    String rows = "Fz (N),CoPx (mm),CoPy (mm)\n" + "800,1,2\n801,1,3\n".repeat(20);
    NamedBytes export = Exports.text("Capture Frame Rate,100.00\n" + rows);
    assertThat(Exports.read(export, new Described().get()).rateHz()).isEqualTo(100);
    assertThat(Exports.read(export, new Described().rate(1000).get()).rateHz()).isEqualTo(1000);
    assertThat(Exports.refusals(export, new Described().rate(1050).get())).hasSize(1);
    assertThat(Exports.refusals(export, new Described().rate(50).get())).hasSize(1);
  }

  /** 800 Hz in whole milliseconds: steps of 1 and 2 ms that are no gaps. */
  @Test
  void roundedTimesAreEven() throws BadInput {
    Recording recording = read(export(801, "%.3f", i -> Math.floor(i * 1.25) / 1000));
    assertThat(recording.timeS().size()).isEqualTo(801);
    assertThat(recording.rateHz()).isCloseTo(800, within(EXACT));
    assertThat(Exports.remarks(recording)).noneMatch(r -> r.contains("gaps"));
  }

  /** 2000 Hz in whole milliseconds: every time twice, with values of its own. */
  @Test
  void timesCoarserThanTheSamplingAreSpread() throws BadInput {
    Recording recording = read(export(2001, "%.3f", i -> Math.floor(i / 2.0) / 1000));
    assertThat(recording.timeS().size()).isEqualTo(2001);
    assertThat(recording.rateHz()).isCloseTo(2000, within(EXACT));
    assertThat(Exports.remarks(recording))
        .contains(
            "The rows' times or numbers are coarser than the sampling; the rows were spread"
                + " evenly.");
  }

  /** Hundredths from 0 to 20, each ten times; the recording lasts 19.999 s and not 20. */
  @Test
  void theRateOfCoarseTimesIsTakenBetweenTheirChanges() throws BadInput {
    Recording recording = read(export(2000, "%.2f", i -> Math.floor((i + 3) / 10.0) / 100));
    assertThat(recording.rateHz()).isCloseTo(1000, within(EXACT));
  }

  @Test
  void aClockOfWholeSecondsAsksForTheRate() throws BadInput {
    NamedBytes export = export(2000, "%.0f", i -> Math.floor((i + 30) / 100.0));
    assertThat(Exports.refusals(export, new Described().get()))
        .containsExactly(
            "stand.csv, column Time (s): the times in 'Time (s)' are whole seconds, which give the"
                + " rate of the rows only roughly (about 100.0 Hz). Add to the plate description,"
                + " with the rate in Hz for unknown: time: {rate-hz: unknown}");
    Recording described = Exports.read(export, new Described().rate(98.5).get());
    assertThat(described.rateHz()).isEqualTo(98.5);
    assertThat(described.timeS().size()).isEqualTo(2000);
    assertThat(Exports.refusals(export, new Described().rate(50).get())).hasSize(1);
  }

  /** As many rows as samples; between the two, each row is still its own sample's. */
  @Test
  void aRowPrintedTwiceAndOneLostDoNotMakeUpForEachOther() throws BadInput {
    StringBuilder text = new StringBuilder("Time (s),Fz (N),CoPx (mm),CoPy (mm)\n");
    for (int i = 0; i < 100; i++) {
      String row = String.format(Locale.ROOT, "%.2f,800,%d,0\n", i / 100.0, i);
      text.append(i == 20 ? row + row : i == 60 ? "" : row);
    }
    Recording recording = read(Exports.text(text.toString()));
    PlateTrack plate = recording.plates().get(0);
    assertThat(recording.timeS().size()).isEqualTo(100);
    for (int i = 0; i < 100; i++) {
      assertThat(plate.usable().at(i)).as("sample %s", i).isTrue();
      assertThat(plate.copRightMm().orElseThrow().at(i)).as("sample %s", i).isEqualTo(i);
    }
  }

  @Test
  void aRowPrintedTwiceCountsOnce() throws BadInput {
    Recording recording =
        read(
            Exports.of(
                "Time (s),Fz (N),CoPx (mm),CoPy (mm)",
                "0.00,800,1,2",
                "0.01,801,1,2",
                "0.01,801,1,2",
                "0.02,802,1,2"));
    assertThat(recording.timeS().size()).isEqualTo(3);
    assertThat(recording.plates().get(0).upN().orElseThrow().at(2)).isEqualTo(802);
    assertThat(Exports.remarks(recording)).contains("Rows printed twice: 1; each counts once.");
  }

  /** One in fifty rows shares its time with the row above but holds another value. */
  @Test
  void ofSeveralRowsAtOneTimeTheFirstCounts() throws BadInput {
    Recording recording = read(export(101, "%.2f", i -> (i > 50 ? i - 1 : i) / 100.0));
    assertThat(recording.timeS().size()).isEqualTo(100);
    assertThat(Exports.remarks(recording))
        .contains(
            "Rows with the same time or number as the row above but other values: 1; only the first"
                + " of each counts.");
  }

  @Test
  void atAGapSamplesWithoutValueArePutIn() throws BadInput {
    Recording recording = read(export(95, "%.2f", i -> (i >= 40 ? i + 5 : i) / 100.0));
    assertThat(recording.timeS().size()).isEqualTo(100);
    assertThat(recording.rateHz()).isCloseTo(100, within(EXACT));
    UsableMask usable = recording.plates().get(0).usable();
    assertThat(usable.at(39)).isTrue();
    assertThat(usable.at(40)).isFalse();
    assertThat(usable.at(44)).isFalse();
    assertThat(usable.at(45)).isTrue();
    assertThat(usable.count()).isEqualTo(95);
    assertThat(Exports.remarks(recording))
        .contains("Gaps in the rows' times or numbers: 1. Samples missing there: 5.");
  }

  /** A tenth of a second at most, and a hundredth of the samples. */
  @Test
  void aShortGapIsBridgedByAStraightLine() throws BadInput {
    Recording recording = read(export(1000, "%.2f", i -> (i >= 400 ? i + 10 : i) / 100.0));
    PlateTrack plate = recording.plates().get(0);
    assertThat(plate.usable().count()).isEqualTo(1010);
    double before = plate.upN().orElseThrow().at(399);
    double after = plate.upN().orElseThrow().at(410);
    assertThat(plate.upN().orElseThrow().at(402))
        .isCloseTo(before + 3 * (after - before) / 11, within(EXACT));
    assertThat(Exports.remarks(recording))
        .contains(
            "Gaps in the rows' times or numbers: 1. Samples missing there: 10.",
            "Short gaps bridged by straight lines: 1, with 10 samples together, none longer than"
                + " 100 ms.");
  }

  @Test
  void aLongerGapIsNotBridged() throws BadInput {
    Recording longer = read(export(2000, "%.2f", i -> (i >= 400 ? i + 11 : i) / 100.0));
    assertThat(longer.plates().get(0).usable().count()).isEqualTo(2000);
    Recording many = read(export(980, "%.2f", i -> (i >= 400 ? i + 10 : i) / 100.0));
    assertThat(many.plates().get(0).usable().count()).isEqualTo(980);
  }

  /** Sample 40 late by 0.9 of a step: the next step makes up for it, and no row is missing. */
  @Test
  void aTimeOutOfItsPlaceIsNoGap() throws BadInput {
    Recording recording = read(export(100, "%.3f", i -> (i == 40 ? 40.9 : i) / 100.0));
    assertThat(recording.timeS().size()).isEqualTo(100);
    assertThat(recording.rateHz()).isCloseTo(100, within(EXACT));
    assertThat(recording.plates().get(0).usable().count()).isEqualTo(100);
    assertThat(Exports.remarks(recording))
        .contains(
            "Times or numbers more than half a step out of place: 1; the rows are treated as evenly"
                + " spaced.");
  }

  @Test
  void moreThanATenthMissingIsRefused() {
    assertThat(
            Exports.refusals(
                export(90, "%.2f", i -> (i >= 40 ? i + 10 : i) / 100.0), new Described().get()))
        .containsExactly(
            "stand.csv line 42, column Time (s): expected rows without gaps; in the whole table 10"
                + " samples are missing and 90 are there, and the longest gap ends here. Export"
                + " again.");
    assertThat(
            Exports.refusals(
                export(90, "%.2f", i -> (i >= 40 ? i + 9 : i) / 100.0), new Described().get()))
        .isEmpty();
  }

  /** One wrong number at the end says nothing of the unit; it is said itself. */
  @Test
  void aWrongLastTimeDoesNotMisleadTheUnit() {
    String names = "Time,Fz (N),CoPx (mm),CoPy (mm)\n";
    StringBuilder rows = new StringBuilder(names);
    for (int i = 0; i < 60; i++) {
      rows.append(i < 59 ? i * 0.01 : 999_999).append(",800,1,2\n");
    }
    assertThat(Exports.refusals(Exports.text(rows.toString()), new Described().get()))
        .singleElement()
        .asString()
        .startsWith("stand.csv line 61, column Time: expected rows without gaps;");
  }

  /** 1000 Hz in whole hundredths: most steps are zero, and the unit is still told. */
  @Test
  void coarseTimesTellTheirUnit() throws BadInput {
    StringBuilder rows = new StringBuilder("Time,Fz (N),CoPx (mm),CoPy (mm)\n");
    for (int i = 0; i < 1001; i++) {
      rows.append(Math.floor(i / 10.0) / 100).append(",").append(800 + i % 7).append(",1,2\n");
    }
    Recording recording = read(Exports.text(rows.toString()));
    assertThat(recording.rateHz()).isCloseTo(1000, within(EXACT));
  }

  @Test
  void midnightDoesNotRunBack() throws BadInput {
    Recording recording =
        read(
            Exports.of(
                "Time,Fz (N),CoPx (mm),CoPy (mm)",
                "23:59:59.98,800,1,2",
                "23:59:59.99,801,1,2",
                "0:00:00.00,801,1,2",
                "0:00:00.01,802,1,2"));
    assertThat(recording.rateHz()).isCloseTo(100, within(1e-6));
  }

  @Test
  void aStatedRateThatContradictsTheTimesIsRefused() {
    NamedBytes export =
        Exports.text("Rate,200\nTime (s),Fz (N),CoPx (mm),CoPy (mm)\n0.00,800,1,2\n0.01,800,1,2\n");
    assertThat(Exports.refusals(export, new Described().get()))
        .containsExactly(
            "stand.csv, column Time (s): the times make 100.0 Hz, but 200.0 Hz is stated. Correct"
                + " the one that is wrong.");
  }

  @Test
  void aTimeThatIsMissingIsRefused() {
    NamedBytes export =
        Exports.of(
            "Time (s),Fz (N),CoPx (mm),CoPy (mm)", "0.00,800,1,2", ",800,1,2", "0.02,800,1,2");
    assertThat(Exports.refusals(export, new Described().get()))
        .containsExactly(
            "stand.csv line 3, column Time (s): expected a time, found none. Delete the row"
                + " or export again.");
  }
}
