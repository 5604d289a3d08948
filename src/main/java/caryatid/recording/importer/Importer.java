package caryatid.recording.importer;

import caryatid.recording.model.ColumnView;
import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.HashingInput;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import java.util.List;
import java.util.Optional;

/** Reads a force plate's text export; the entry point of {@code recording}. */
public final class Importer {
  private Importer() {}

  /**
   * Reads an export.
   *
   * @param export the file's bytes; read as a stream, more than once if need be
   * @param description what the export means, where the file does not say it itself
   * @throws BadInput if the file cannot be read, is damaged, or leaves a question open; every
   *     problem found is listed
   */
  public static Recording read(NamedBytes export, Optional<PlateDescription> description)
      throws BadInput {
    HashingInput digested = new HashingInput(export);
    return new ExportReader(digested, description).read(digested::provenance);
  }

  /**
   * Tells what is understood of an export, whether it can be used or not.
   *
   * @param export the file's bytes
   * @param description what the export means, as far as that is known already
   */
  public static Inspection inspect(NamedBytes export, Optional<PlateDescription> description) {
    return new ExportReader(export, description).inspect();
  }

  /**
   * Lists an export's columns, whatever they are used for; none where it is no table.
   *
   * @param layout how the text is laid out, as far as that is known already
   */
  public static List<ColumnView> columns(NamedBytes export, ExportLayout layout) {
    return ColumnSurvey.of(export, layout);
  }
}
