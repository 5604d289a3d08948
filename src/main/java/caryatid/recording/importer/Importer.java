package caryatid.recording.importer;

import caryatid.recording.model.ColumnView;
import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.HashingInput;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads a force plate's text export; the entry point of {@code recording}. */
public final class Importer {
  /** What only a person's recording must not show. */
  private static final Set<ImportProblem> OF_A_PERSON =
      EnumSet.of(
          ImportProblem.TOO_STILL,
          ImportProblem.TOO_HEAVY,
          ImportProblem.DEAD_COLUMN,
          ImportProblem.MEAN_REMOVED);

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
    return new ExportReader(digested, description).read(digested::provenance, Set.of());
  }

  /**
   * Reads an export in which a weight rests on a plate, or a person stands on it wherever the
   * description puts them: that it moves too little or weighs too much for a person, and that it
   * lies off the plate, is no problem. Edges are not used.
   *
   * @throws BadInput as {@link #read}, for any other reason
   */
  public static Recording resting(NamedBytes export, PlateDescription description) throws BadInput {
    HashingInput digested = new HashingInput(export);
    ExportReader reader = new ExportReader(digested, Optional.of(description.withoutEdges()));
    return reader.read(digested::provenance, OF_A_PERSON);
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
    return MotionFile.of(export, Optional.empty())
        .map(file -> file.parsed().table().map(ColumnSurvey::views).orElse(List.of()))
        .orElseGet(() -> ColumnSurvey.of(export, layout));
  }
}
