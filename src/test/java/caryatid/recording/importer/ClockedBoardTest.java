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
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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

  private static Recording read(ClockedBoard board, Clock clock) throws BadInput {
    return Exports.read(board.export(clock), new Described().get());
  }

  private static Standing standing(Recording recording) throws BadInput {
    return StandAnalysis.analyse(recording, CONDITIONS);
  }

  private static MeanLoad body(Standing standing) {
    return standing.load(LoadLineOwner.WHOLE_BODY).orElseThrow();
  }

  @ParameterizedTest
  @EnumSource(Clock.class)
  void theMeanIsTheTruthAndLostSamplesCostNothing(Clock clock) throws BadInput {
    for (int seed = 0; seed < BOARDS; seed++) {
      ClockedBoard board = new ClockedBoard(seed, SECONDS);
      Recording recording = read(board, clock);
      Standing standing = standing(recording);
      MeanLoad body = body(standing);
      assertThat(body.copRightMm().orElseThrow().value())
          .as("seed %s", seed)
          .isCloseTo(board.meanRightMm(), within(0.05));
      assertThat(body.copAnteriorMm().value())
          .as("seed %s", seed)
          .isCloseTo(board.meanAnteriorMm(), within(0.05));
      assertThat(recording.rateHz()).as("seed %s", seed).isCloseTo(98.3, within(1.0));
      assertThat(standing.stretch().durationS())
          .as("seed %s", seed)
          .isCloseTo(SECONDS, within(0.1));
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
                + " They were taken as evenly spaced over the same time, at 98.1 Hz.",
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
  void intervalsCoverAsOften(Clock clock) throws BadInput {
    int even = 0;
    int uneven = 0;
    for (int seed = 0; seed < BOARDS; seed++) {
      even += covers(new ClockedBoard(seed, SECONDS), Clock.EVEN);
      uneven += covers(new ClockedBoard(seed, SECONDS), clock);
    }
    assertThat(uneven).isCloseTo(even, within(Math.max(1, BOARDS / 100)));
  }

  private static int covers(ClockedBoard board, Clock clock) throws BadInput {
    Estimate anterior = body(standing(read(board, clock))).copAnteriorMm();
    return Math.abs(anterior.value() - 45) <= 2 * anterior.standardUncertainty() ? 1 : 0;
  }
}
