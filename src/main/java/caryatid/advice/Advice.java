package caryatid.advice;

import caryatid.remark.Remark;
import java.util.List;
import java.util.Optional;

/**
 * What to change next, or why nothing is advised.
 *
 * @param outcome which of the two, and why in short
 * @param remarks what belongs to it, in the order in which it is to be read; last what is said
 *     always
 * @param now the true offsets at the present setting, as far as they are known
 * @param probabilityNow that all of them are within
 * @param proposals likeliest first; empty unless a change is advised
 * @param learnt how this wearer answered
 */
public record Advice(
    Outcome outcome,
    List<Remark> remarks,
    List<Proposal.PredictedOffset> now,
    Optional<Double> probabilityNow,
    List<Proposal> proposals,
    Learnt learnt) {

  /** What an advice comes to. */
  public enum Outcome {
    /** Nothing can be advised. */
    NOT_GIVEN,
    /** Plain causes are to be ruled out first. */
    CAUSES_FIRST,
    /** Every tolerance is met. */
    NOTHING_TO_CHANGE,
    /** What is uncertain is the measurement. */
    MEASURE_AGAIN,
    /** None of the allowed changes makes it more probable. */
    NO_CHANGE_HELPS,
    CHANGE
  }

  public Advice {
    remarks = List.copyOf(remarks);
    now = List.copyOf(now);
    proposals = List.copyOf(proposals);
  }
}
