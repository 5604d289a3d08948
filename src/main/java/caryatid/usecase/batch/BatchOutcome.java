package caryatid.usecase.batch;

import caryatid.remark.Problem;
import caryatid.report.FindingRow;
import java.util.List;

/**
 * What became of one state of a batch.
 *
 * @param state its name
 * @param unsafe what is unsafe, in words; it goes before anything else that is shown
 * @param findings what was found; empty where it was refused or nothing is recommended
 * @param problems why it was refused; empty where it was checked
 * @param before whether it was checked in an earlier run and taken over
 */
public record BatchOutcome(
    String state,
    List<String> unsafe,
    List<FindingRow> findings,
    List<Problem> problems,
    boolean before) {
  public BatchOutcome {
    unsafe = List.copyOf(unsafe);
    findings = List.copyOf(findings);
    problems = List.copyOf(problems);
  }

  /** Whether it could not be checked. */
  public boolean isRefused() {
    return !problems.isEmpty();
  }
}
