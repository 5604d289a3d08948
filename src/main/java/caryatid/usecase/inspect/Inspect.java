package caryatid.usecase.inspect;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.recording.importer.Importer;
import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.remark.BadInput;
import caryatid.sheet.DescriptionReader;
import caryatid.sheet.DescriptionWriter;
import caryatid.wording.ColumnText;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Optional;

/** Inspects an export: what is understood of it, and what must be stated before it can be used. */
public final class Inspect {
  private Inspect() {}

  /**
   * Inspects an export.
   *
   * @param description the plate description (YAML) under which it is seen
   * @throws BadInput if the export is no table at all, or the description cannot be used
   */
  public static Inspection run(NamedBytes export, Optional<NamedBytes> description)
      throws BadInput {
    Optional<PlateDescription> plate = Optional.empty();
    if (description.isPresent()) {
      plate = Optional.of(DescriptionReader.read(description.get()));
    }
    Inspection seen = Importer.inspect(export, plate);
    return seen.sampled().isPresent() ? tried(seen) : asked(export, plate, seen);
  }

  /** Without a description, what the limits answer is not asked. */
  private static Inspection asked(
      NamedBytes export, Optional<PlateDescription> plate, Inspection seen) {
    return plate.isEmpty() ? UnitTrial.answered(export, seen) : seen;
  }

  /** With what would keep a check from finding a stand. */
  private static Inspection tried(Inspection seen) {
    return new Inspection(
        seen.understood(),
        seen.questions(),
        StandTrial.problems(seen.sampled().orElseThrow()),
        seen.remarks(),
        seen.plates(),
        seen.rateHz(),
        seen.draft(),
        seen.sampled());
  }

  /**
   * A first plate description (YAML) of what is known, with the open questions marked, and above it
   * the export's columns.
   */
  public static byte[] draft(NamedBytes export, Inspection inspection, Wording wording) {
    List<String> notes = ColumnText.lines(Importer.columns(export, surveyed(inspection)), wording);
    return DescriptionWriter.write(
            inspection.draft(), inspection.questions(), notes, wording::sayWithin)
        .getBytes(UTF_8);
  }

  /**
   * Lines for a trial sheet: markers on knees and ankles as landmarks, and the joints measured from
   * them by distances that are left open. None where the export has no such marker or no quiet
   * stand.
   */
  public static List<String> landmarks(Inspection inspection, Wording wording) {
    return inspection
        .sampled()
        .map(recording -> MarkedLandmarks.lines(recording, wording))
        .orElse(List.of());
  }

  /** As it was read: names that are still to be written are none. */
  private static ExportLayout surveyed(Inspection inspection) {
    ExportLayout layout = inspection.draft().layout();
    boolean open = layout.columns().contains("unknown");
    return open ? ExportLayout.UNSTATED : layout;
  }
}
