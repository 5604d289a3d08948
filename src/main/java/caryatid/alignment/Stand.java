package caryatid.alignment;

import caryatid.loadline.Landmark;
import caryatid.loadline.Moment;
import caryatid.loadline.Offset;
import caryatid.recording.model.Provenance;
import caryatid.remark.Remark;
import caryatid.sheet.TrialSheet;
import caryatid.standing.Standing;
import java.util.List;
import java.util.Optional;

/**
 * One recording, how the wearer stood, and what was found.
 *
 * @param recording the recording's bytes
 * @param sheet the trial sheet's bytes
 * @param description the plate description's bytes; empty when the file needed none
 * @param trial what the sheet says
 * @param landmarks the sheet's landmarks in the person's frame
 * @param standing what the recording says
 * @param offsets of every line past every landmark, in every plane where it was marked
 * @param moments about knees and ankles where force was recorded
 * @param remarks of the importer, of the stand and of the load line
 */
public record Stand(
    Provenance recording,
    Provenance sheet,
    Optional<Provenance> description,
    TrialSheet trial,
    List<Landmark> landmarks,
    Standing standing,
    List<Offset> offsets,
    List<Moment> moments,
    List<Remark> remarks) {
  public Stand {
    landmarks = List.copyOf(landmarks);
    offsets = List.copyOf(offsets);
    moments = List.copyOf(moments);
    remarks = List.copyOf(remarks);
  }
}
