package caryatid.calibration;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.EarlierState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How one wearer fared with a strategy.
 *
 * @param stands states that were measured until all targets truly lay within, the first and the
 *     last of them counted; {@link #MOST} where that never came
 * @param turns how often something was turned
 * @param harmful after how many of these some offset truly lay further outside its tolerance by
 *     more than the smallest difference that its state states
 * @param predicted intervals that were predicted
 * @param covered how many of them held the true offset
 */
record Course(int stands, int turns, int harmful, int predicted, int covered) {
  static final int MOST = 12;

  static Course of(AlignedWearer wearer, Strategy strategy) {
    return new Run(wearer, strategy).course();
  }

  private static final class Run {
    private final AlignedWearer wearer;
    private final Strategy strategy;
    private final List<Strategy.Visit> visits = new ArrayList<>();
    private final List<EarlierState> before = new ArrayList<>();
    private double[] settings = new double[Screw.values().length];
    private int turns;
    private int harmful;
    private int predicted;
    private int covered;

    Run(AlignedWearer wearer, Strategy strategy) {
      this.wearer = wearer;
      this.strategy = strategy;
    }

    Course course() {
      int stands = 0;
      while (stands < MOST) {
        Optional<AlignmentState> state = wearer.measure(settings, stands, before);
        stands++;
        if (wearer.within(settings)) {
          break;
        }
        state.ifPresent(this::step);
      }
      int counted = wearer.within(settings) ? stands : MOST;
      return new Course(counted, turns, harmful, predicted, covered);
    }

    private void step(AlignmentState state) {
      visits.add(new Strategy.Visit(settings.clone(), state));
      before.add(EarlierState.of(state, Measured.NOWHERE.sha512()));
      Strategy.Step step = strategy.next(visits);
      step.turn().ifPresent(turn -> turn(turn, step.predicted(), state));
    }

    private void turn(Strategy.Turn turn, List<double[]> intervals, AlignmentState state) {
      double[] was = wearer.trueMm(settings);
      settings = settings.clone();
      settings[turn.screw().ordinal()] += turn.by();
      double[] is = wearer.trueMm(settings);
      turns++;
      boolean harm = false;
      for (int offset = 0; offset < is.length; offset++) {
        double worse =
            AlignedWearer.beyondMm(offset, is[offset])
                - AlignedWearer.beyondMm(offset, was[offset]);
        harm |= worse > smallestMm(state, offset);
      }
      harmful += harm ? 1 : 0;
      for (int offset = 0; offset < intervals.size(); offset++) {
        double[] ends = intervals.get(offset);
        predicted++;
        covered += is[offset] >= ends[0] && is[offset] <= ends[1] ? 1 : 0;
      }
    }

    private static double smallestMm(AlignmentState state, int offset) {
      return state.offset(state.findings().get(offset)).orElseThrow().smallestDifferenceMm();
    }
  }
}
