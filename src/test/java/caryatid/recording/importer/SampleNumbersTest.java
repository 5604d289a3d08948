package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.ImportFact;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.Recording;
import caryatid.recording.model.UsableMask;
import caryatid.remark.BadInput;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * A column that counts the samples, where there is none of times, is held to the same rules. Rates
 * are exact, as the description states them. Validation by construction.
 */
class SampleNumbersTest {
  private static final PlateDescription DESCRIBED = new Described().rate(100).get();

  private static NamedBytes export(String above, String name, int rows, IntUnaryOperator number) {
    StringBuilder text = new StringBuilder(above + name + ",Fz (N),CoPx (mm),CoPy (mm)\n");
    for (int i = 0; i < rows; i++) {
      text.append(number.applyAsInt(i)).append(",").append(800 + i % 7).append(",1,2\n");
    }
    return Exports.text(text.toString());
  }

  private static NamedBytes export(int rows, IntUnaryOperator number) {
    return export("", "Frame", rows, number);
  }

  @Test
  void atAJumpSamplesWithoutValueArePutIn() throws BadInput {
    Recording recording = Exports.read(export(95, i -> 1 + (i >= 40 ? i + 5 : i)), DESCRIBED);
    assertThat(recording.timeS().size()).isEqualTo(100);
    assertThat(recording.rateHz()).isEqualTo(100);
    UsableMask usable = recording.plates().get(0).usable();
    assertThat(usable.at(39)).isTrue();
    assertThat(usable.at(40)).isFalse();
    assertThat(usable.at(44)).isFalse();
    assertThat(usable.at(45)).isTrue();
    assertThat(Exports.remarks(recording))
        .contains("Gaps in the rows' times or numbers: 1. Samples missing there: 5.");
  }

  @Test
  void moreThanATenthMissingIsRefused() {
    assertThat(Exports.refusals(export(90, i -> i >= 40 ? i + 10 : i), DESCRIBED))
        .containsExactly(
            "stand.csv line 42, column Frame: expected rows without gaps; in the whole table 10"
                + " samples are missing and 90 are there, and the longest gap ends here. Export"
                + " again.");
    assertThat(Exports.refusals(export(90, i -> i >= 40 ? i + 9 : i), DESCRIBED)).isEmpty();
  }

  @Test
  void aNumberThatComesTwiceCountsOnce() throws BadInput {
    Recording recording = Exports.read(export(101, i -> i > 50 ? i - 1 : i), DESCRIBED);
    assertThat(recording.timeS().size()).isEqualTo(100);
    assertThat(Exports.remarks(recording))
        .contains(
            "Rows with the same time or number as the row above but other values: 1; only the first"
                + " of each counts.");
  }

  @Test
  void numbersThatRunBackAreRefused() {
    assertThat(Exports.refusals(export(60, i -> i % 30), DESCRIBED))
        .containsExactly(
            "stand.csv line 32, column Frame: expected a larger number than in the row above (29),"
                + " found 0. Several recordings may have been joined; separate them, or export"
                + " again.");
  }

  @Test
  void aNumberThatIsMissingIsRefused() {
    NamedBytes export =
        Exports.of("Frame,Fz (N),CoPx (mm),CoPy (mm)", "1,800,1,2", ",800,1,2", "3,800,1,2");
    assertThat(Exports.refusals(export, DESCRIBED))
        .containsExactly(
            "stand.csv line 3, column Frame: expected a sample number, found none. Delete the row"
                + " or export again.");
  }

  /** What is wrong with the numbers is said although the rate is still asked for. */
  @Test
  void allThatIsWrongIsSaidAtOnce() {
    assertThat(Exports.refusals(export(60, i -> i % 30), new Described().get()))
        .hasSize(2)
        .anyMatch(s -> s.contains("found 0."))
        .anyMatch(s -> s.contains("is stated nowhere"));
  }

  @Test
  void everyTenthNumberLeavesAStatedRateOpen() throws BadInput {
    NamedBytes export = export("Sampling rate: 1000\n", "Frame", 60, i -> 10 * i);
    assertThat(Exports.refusals(export, new Described().get()))
        .containsExactly(
            "stand.csv: the sample numbers in 'Frame' rise by 10 per row, so it is not clear"
                + " whether the stated 1000.0 Hz is the rate of the rows. Add to the plate"
                + " description the rate of the rows in Hz for unknown: time: {rate-hz: unknown};"
                + " it is 100.0 Hz if rows were left out.");
    assertThat(Exports.read(export, DESCRIBED).timeS().size()).isEqualTo(60);
    NamedBytes plain = export("Sampling rate: 1000\n", "Frame", 60, i -> i);
    assertThat(Exports.refusals(plain, new Described().get())).isEmpty();
  }

  /** A name is not enough: the number of the trial in every row, or a frame for several samples. */
  @Test
  void aColumnThatDoesNotCountIsNotUsed() throws BadInput {
    for (IntUnaryOperator number : List.<IntUnaryOperator>of(i -> 7, i -> i / 10)) {
      NamedBytes export = export("", "No", 60, number);
      assertThat(Exports.read(export, DESCRIBED).timeS().size()).isEqualTo(60);
      assertThat(Importer.inspect(export, Optional.of(DESCRIBED)).understood())
          .anyMatch(fact -> fact.aspect() == ImportFact.NO_NUMBERS);
    }
  }

  /** A column named as one of times that counts, where the description gives the rate. */
  @Test
  void timesThatCountSamplesAreHeldToTheSameRules() throws BadInput {
    NamedBytes gap = export("", "Time", 95, i -> i >= 40 ? i + 5 : i);
    assertThat(Exports.read(gap, DESCRIBED).timeS().size()).isEqualTo(100);
  }
}
