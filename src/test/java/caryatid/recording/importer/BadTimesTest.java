package caryatid.recording.importer;

import static caryatid.recording.importer.Described.plate;
import static caryatid.recording.importer.Exports.assertRefused;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.TimeUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a person reads of times that cannot be used; each sentence whole. */
class BadTimesTest {
  private static final PlateDescription USUAL = Described.usual();

  private static List<String> slow(String step) {
    StringBuilder rows = new StringBuilder("Time (s),Fz,CoPx,CoPy\n");
    for (int i = 0; i < 10; i++) {
      rows.append(i * Double.parseDouble(step)).append(",800,1,2\n");
    }
    return Exports.refusals(Exports.text(rows.toString()), USUAL);
  }

  @Test
  void noRate() {
    assertRefused(
        Exports.rows("Fz,CoPx,CoPy", "800,1,2", 3),
        USUAL,
        "stand.csv: the sampling rate of the 3 rows is stated nowhere. Add to the plate"
            + " description, with the rate in Hz for unknown: time: {rate-hz: unknown}");
  }

  @Test
  void aTimeUnitThatMayBeAnother() {
    assertRefused(
        Exports.rows("Time,Fz,CoPx,CoPy", "#,800,1,2", 5),
        USUAL,
        "stand.csv line 1, column Time: the unit of the times in 'Time' is stated"
            + " nowhere and more than one is possible. Add to the plate description: time:"
            + " {column: Time, unit: unknown}, with s, ms or us for unknown; if the column"
            + " counts samples: time: {rate-hz: unknown}, with the rate in Hz.");
  }

  @Test
  void timesInMillisecondsThatCanOnlyBeMicroseconds() {
    assertRefused(
        Exports.rows("time_ms,Fz,CoPx,CoPy", "#000,800,1,2", 5),
        USUAL,
        "stand.csv line 1, column time_ms: the unit is given as ms, which would make 1.0 Hz, no"
            + " rate of a force plate; in us it would be 1000.0 Hz. Add to the plate description:"
            + " time: {column: time, unit: us}");
  }

  @Test
  void timesThatTheDescriptionTakesForSecondsAndAreMilliseconds() {
    assertRefused(
        Exports.rows("Time,Fz,CoPx,CoPy", "#,800,1,2", 5),
        new Described().time("Time", TimeUnit.S).plate(plate()).get(),
        "stand.csv line 1, column Time: the plate description gives the unit of the times as s,"
            + " which would make 1.0 Hz, no rate of a force plate; in ms it would be 1000.0 Hz."
            + " Correct in it: time: {column: Time, unit: ms}; if 1.0 Hz is right, write that as"
            + " rate-hz instead.");
  }

  /** 10 Hz is the slowest rate of a plate. */
  @Test
  void tenHertzInSecondsIsARateAndNineIsNot() {
    assertThat(slow("0.1")).isEmpty();
    assertThat(slow("0.11")).singleElement().asString().contains("would make 9.1 Hz");
  }

  @Test
  void timeThatRunsBack() {
    assertRefused(
        Exports.of(
            "Time,Fz,CoPx,CoPy", "0.00,800,1,2", "0.01,800,1,2", "-0.01,800,1,2", "0.00,800,1,2"),
        new Described().time("Time", TimeUnit.S).plate(plate()).get(),
        "stand.csv line 4, column Time: expected a later time than the row above (0.01 s), found"
            + " −0.01 s. Several recordings may have been joined; separate them, or export again.");
  }
}
