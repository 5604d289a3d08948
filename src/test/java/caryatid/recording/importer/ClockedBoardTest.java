package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.recording.importer.ClockedBoard.Clock;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.MeanLoad;
import caryatid.standing.Stance;
import caryatid.standing.StandAnalysis;
import caryatid.standing.Standing;
import caryatid.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Boards whose samples a computer's clock stamps are read. Validation by construction. */
class ClockedBoardTest {
  private static final int BOARDS = Integer.getInteger("boards", 100);
  private static final double SECONDS = 35;

  private static final StandAnalysis.Conditions CONDITIONS =
      new StandAnalysis.Conditions(
          new Stance.BothFeetOnOnePlate(Optional.empty()),
          List.of(),
          OptionalDouble.empty(),
          new PlateAccuracy(0, 0, 0, 0),
          Optional.empty());

  private static final Map<Clock, List<Stand>> STANDS = new EnumMap<>(Clock.class);

  private static Recording read(ClockedBoard board, Clock clock) throws BadInput {
    return Exports.read(board.export(clock), new Described().get());
  }

  private static Standing standing(Recording recording) throws BadInput {
    return StandAnalysis.analyse(recording, CONDITIONS);
  }

  /** Boards whose samples each clock stamped, read once for all tests: that takes longest. */
  @BeforeAll
  static void readAll() throws BadInput {
    for (Clock clock : Clock.values()) {
      List<Stand> stands = new ArrayList<>();
      for (int seed = 0; seed < BOARDS; seed++) {
        stands.add(Stand.on(new ClockedBoard(seed, SECONDS), clock));
      }
      STANDS.put(clock, stands);
    }
  }

  /** What a board's truth is and what was read, without the samples. */
  private record Stand(
      double rightMm, double anteriorMm, double rateHz, double durationS, MeanLoad body) {
    static Stand on(ClockedBoard board, Clock clock) throws BadInput {
      Recording recording = read(board, clock);
      Standing standing = standing(recording);
      return new Stand(
          board.meanRightMm(),
          board.meanAnteriorMm(),
          recording.rateHz(),
          standing.stretch().durationS(),
          standing.load(LoadLineOwner.WHOLE_BODY).orElseThrow());
    }

    boolean covers() {
      Estimate anterior = body.copAnteriorMm();
      return Math.abs(anterior.value() - 45) <= 2 * anterior.standardUncertainty();
    }
  }

  @ParameterizedTest
  @EnumSource(Clock.class)
  void theMeanIsTheTruthAndLostSamplesCostNothing(Clock clock) {
    List<Stand> stands = STANDS.get(clock);
    assertThat(stands).hasSize(BOARDS);
    for (int seed = 0; seed < BOARDS; seed++) {
      Stand stand = stands.get(seed);
      assertThat(stand.body().copRightMm().orElseThrow().value())
          .as("seed %s", seed)
          .isCloseTo(stand.rightMm(), within(0.05));
      assertThat(stand.body().copAnteriorMm().value())
          .as("seed %s", seed)
          .isCloseTo(stand.anteriorMm(), within(0.05));
      assertThat(stand.rateHz()).as("seed %s", seed).isCloseTo(98.3, within(1.0));
      assertThat(stand.durationS()).as("seed %s", seed).isCloseTo(SECONDS, within(0.1));
    }
  }

  @Test
  void whatTheClockDoesIsSaid() throws BadInput {
    Recording asked = read(new ClockedBoard(1, SECONDS), Clock.ASKED);
    assertThat(Exports.remarks(asked))
        .containsExactly(
            "Rows printed twice: 6; each counts once.",
            "Gaps in the rows' times or numbers: 1. Samples missing there: 8.",
            "The rows have uneven times, as a computer's clock gives them: steps of 9 to 90 ms."
                + " They are treated as evenly spaced over the same time, at 98.1 Hz.",
            "Short gaps bridged by straight lines: 1, with 8 samples together, none longer than 82"
                + " ms.");
  }

  /** On this board no step is a millisecond longer than the usual one, but some are two. */
  @Test
  void aClockWithoutTheShortestDelayIsKnownAsOne() throws BadInput {
    Recording asked = read(new ClockedBoard(151, SECONDS), Clock.ASKED);
    assertThat(Exports.remarks(asked)).anyMatch(remark -> remark.contains("uneven times"));
    assertThat(standing(asked).stretch().durationS()).isCloseTo(SECONDS, within(0.1));
  }

  /** The interval holds the long-run mean of 45 mm as often as by an even clock. */
  @ParameterizedTest
  @EnumSource(Clock.class)
  void intervalsCoverAsOften(Clock clock) {
    long even = STANDS.get(Clock.EVEN).stream().filter(Stand::covers).count();
    long uneven = STANDS.get(clock).stream().filter(Stand::covers).count();
    assertThat(uneven).isCloseTo(even, within(Math.max(1L, BOARDS / 100)));
  }
}
