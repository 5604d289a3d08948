package caryatid.calibration;

import caryatid.alignment.AlignmentState;
import java.util.List;
import java.util.Optional;

/** What to turn next, from what was measured so far. */
interface Strategy {

  /**
   * The next step.
   *
   * @param visits what was measured so far, at least one; the last one at the present settings
   */
  Step next(List<Visit> visits);

  /**
   * A state that was measured.
   *
   * @param settings of the screws, from where they stood at first
   */
  record Visit(double[] settings, AlignmentState state) {
    /** The measured offset, mm. */
    double measuredMm(int offset) {
      return state.findings().get(offset).offset().mm().value();
    }
  }

  /**
   * One step.
   *
   * @param turn what to turn; empty to stand again with nothing changed
   * @param predicted 90 % intervals of the offsets after it, mm, where the strategy predicts
   */
  record Step(Optional<Turn> turn, List<double[]> predicted) {
    static final Step AGAIN = new Step(Optional.empty(), List.of());
  }

  /**
   * A screw, turned.
   *
   * @param by by how much, in its unit
   */
  record Turn(Screw screw, double by) {}
}
