package caryatid.alignment;

import caryatid.loadline.Finding;
import java.util.Optional;

/** What would decide a finding that is undecided, if the line is measured again as it is. */
public enum Undecided {
  /** More stands, five in all. */
  STANDS,
  /** Landmarks marked twice as well, and no number of stands up to five without that. */
  MARKS,
  /** Neither. */
  NEITHER;

  private static final int MOST_STANDS = 5;
  private static final double TWICE_AS_WELL = 0.5;

  /**
   * Of one finding of a state.
   *
   * @return empty if the finding is decided; more stands if their scatter is not known
   */
  public static Optional<Undecided> of(AlignmentState state, Finding finding) {
    if (!finding.verdict().tooClose()) {
      return Optional.empty();
    }
    return Optional.of(
        Foresight.of(state, finding)
            .map(ahead -> of(ahead, finding.offset().mm().value(), state.stands().size()))
            .orElse(STANDS));
  }

  private static Undecided of(Foresight ahead, double mm, int made) {
    int stands = Math.max(MOST_STANDS, made);
    if (ahead.decidesAt(mm, stands, 1)) {
      return STANDS;
    }
    return ahead.decidesAt(mm, stands, TWICE_AS_WELL) ? MARKS : NEITHER;
  }
}
