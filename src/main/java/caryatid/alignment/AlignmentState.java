package caryatid.alignment;

import caryatid.loadline.Finding;
import caryatid.loadline.UnjudgedTarget;
import caryatid.recording.model.Provenance;
import caryatid.remark.Remark;
import caryatid.sheet.TrialSheet;
import java.util.List;
import java.util.Optional;

/**
 * The stands made without changing the prosthesis between them, and the findings of all of them.
 *
 * @param stands at least one
 * @param offsets of the state's stands together
 * @param findings those offsets against the targets
 * @param withheld targets without a finding, and why
 * @param remarks about the state, warnings first; those of its stands are with the stands
 */
public record AlignmentState(
    List<Stand> stands,
    List<StateOffset> offsets,
    List<Finding> findings,
    List<UnjudgedTarget> withheld,
    List<Remark> remarks) {
  /**
   * @throws IllegalArgumentException if there is no stand
   */
  public AlignmentState {
    if (stands.isEmpty()) {
      throw new IllegalArgumentException("a state without a stand");
    }
    stands = List.copyOf(stands);
    offsets = List.copyOf(offsets);
    findings = List.copyOf(findings);
    withheld = List.copyOf(withheld);
    remarks = List.copyOf(remarks);
  }

  /** The trial sheet, the same for each of its stands. */
  public TrialSheet trial() {
    return stands.get(0).trial();
  }

  /** Whether it was measured as another state: on the same plate, by its description, and feet. */
  public boolean isMeasuredAs(AlignmentState other) {
    Stand mine = stands.get(0);
    Stand theirs = other.stands.get(0);
    return mine.trial().stance().equals(theirs.trial().stance())
        && mine.description()
            .map(Provenance::sha512)
            .equals(theirs.description().map(Provenance::sha512));
  }

  /** The state's offset that a finding of it judges. */
  public Optional<StateOffset> offset(Finding finding) {
    return offsets.stream().filter(o -> o.offset().equals(finding.offset())).findFirst();
  }
}
