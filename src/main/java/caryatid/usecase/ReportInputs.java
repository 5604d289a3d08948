package caryatid.usecase;

import caryatid.alignment.EarlierStates;
import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.format.ResultDifference;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Provenance;
import caryatid.remark.BadInput;
import caryatid.report.pdf.Attachments;
import caryatid.report.pdf.Attachments.AttachedFile;
import caryatid.report.pdf.Attachments.AttachmentRole;
import caryatid.standing.NamedStretch;
import caryatid.standing.QuietStretch;
import caryatid.standing.Stretch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The files inside a report, as inputs of a check. */
final class ReportInputs {
  private final Attachments files;

  ReportInputs(Attachments files) {
    this.files = files;
  }

  /** The result's bytes. */
  byte[] result() {
    return only(AttachmentRole.RESULT).bytes();
  }

  /** What a result was found in, with the stretches that were set by hand. */
  Inputs inputs(Result kept) {
    return new Inputs(
        all(AttachmentRole.RECORDING).toList(),
        bytes(only(AttachmentRole.TRIAL_SHEET)),
        all(AttachmentRole.PLATE_DESCRIPTION).findFirst(),
        beside(),
        byHand(kept),
        all(AttachmentRole.EARLIER_STATES).findFirst());
  }

  /**
   * Sheets lie inside without the folders they came from. Several may share a name; they were put
   * there in the order in which one is based on the next.
   */
  private Function<String, Optional<NamedBytes>> beside() {
    List<NamedBytes> left = new ArrayList<>(all(AttachmentRole.OTHER_SHEET).toList());
    return sheet -> {
      Optional<NamedBytes> found =
          left.stream().filter(f -> f.name().equals(Provenance.fileName(sheet))).findFirst();
      found.ifPresent(left::remove);
      return found;
    };
  }

  /** What was set beside the sheet; what the sheet sets is in the sheet. */
  private static List<NamedStretch> byHand(Result kept) {
    List<NamedStretch> inSheet = kept.state().trial().stretches();
    List<NamedStretch> set = new ArrayList<>();
    for (Stand stand : kept.state().stands()) {
      String recording = stand.recording().name();
      QuietStretch used = stand.standing().stretch();
      if (used.byHand() && NamedStretch.of(recording, inSheet).isEmpty()) {
        set.add(new NamedStretch(recording, new Stretch(used.fromS(), used.toS())));
      }
    }
    return set;
  }

  /**
   * Files that are not those a result was found in, by their checksums. A result does not list the
   * sheets that the trial sheet is based on.
   *
   * @throws BadInput if a file cannot be read
   */
  List<ResultDifference> strangers(Result kept) throws BadInput {
    List<Stand> stands = kept.state().stands();
    List<ResultDifference> found = new ArrayList<>();
    compare(
        "recording",
        stands.stream().map(Stand::recording).toList(),
        AttachmentRole.RECORDING,
        found);
    compare("sheet", List.of(stands.get(0).sheet()), AttachmentRole.TRIAL_SHEET, found);
    compare(
        "description",
        stands.get(0).description().stream().toList(),
        AttachmentRole.PLATE_DESCRIPTION,
        found);
    compare(
        "earlier",
        kept.earlier().map(EarlierStates::file).stream().toList(),
        AttachmentRole.EARLIER_STATES,
        found);
    return found;
  }

  private void compare(
      String what, List<Provenance> told, AttachmentRole role, List<ResultDifference> found)
      throws BadInput {
    List<Provenance> there = new ArrayList<>();
    for (NamedBytes file : all(role).toList()) {
      there.add(Provenance.of(file));
    }
    for (int i = 0; i < Math.max(told.size(), there.size()); i++) {
      String before = sum(told, i);
      String now = sum(there, i);
      if (!before.equals(now)) {
        found.add(new ResultDifference(what + "[" + i + "].sha512", before, now));
      }
    }
  }

  private static String sum(List<Provenance> files, int i) {
    return i < files.size() ? files.get(i).sha512() : ResultDifference.NOTHING;
  }

  private AttachedFile only(AttachmentRole role) {
    return files.files().stream().filter(f -> f.role() == role).findFirst().orElseThrow();
  }

  private Stream<NamedBytes> all(AttachmentRole role) {
    return files.files().stream().filter(file -> file.role() == role).map(ReportInputs::bytes);
  }

  private static NamedBytes bytes(AttachedFile file) {
    return NamedBytes.of(file.name(), file.bytes());
  }
}
