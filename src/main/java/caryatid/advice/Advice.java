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
 * @param present the true offsets at the present setting, as far as they are known
 * @param probabilityNow that all of them are within
 * @param proposals likeliest first; empty unless a change is advised
 * @param learnt how this wearer answered
 */
public record Advice(
    AdviceOutcome outcome,
    List<Remark> remarks,
    List<Proposal.PredictedOffset> present,
    Optional<Double> probabilityNow,
    List<Proposal> proposals,
    Learnt learnt) {

  public Advice {
    remarks = List.copyOf(remarks);
    present = List.copyOf(present);
    proposals = List.copyOf(proposals);
  }
}
