package caryatid.usecase.inspect;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.recording.importer.Importer;
import caryatid.recording.model.ColumnView;
import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.MeasuringLine;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.remark.BadInput;
import caryatid.sheet.DescriptionWriter;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A description of a plate on its way: what is understood of one of its exports, and what is still
 * to be answered.
 *
 * @param export the export
 * @param inspection what is understood of it under the description so far
 * @param text the description so far (YAML), gaps marked
 */
public record PlateDraft(NamedBytes export, Inspection inspection, String text) {
  private static final String NAME = "plate.yaml";

  /**
   * The draft of an export.
   *
   * @param description what was answered so far (YAML)
   * @throws BadInput if the export is no table at all, or the description cannot be used
   */
  public static PlateDraft of(NamedBytes export, Optional<String> description, Wording wording)
      throws BadInput {
    Optional<NamedBytes> answered = description.map(PlateDraft::named);
    Inspection inspection = Inspect.run(export, answered);
    return new PlateDraft(
        export, inspection, new String(Inspect.draft(export, inspection, wording), UTF_8));
  }

  private static NamedBytes named(String description) {
    return named(NAME, description);
  }

  private static NamedBytes named(String file, String description) {
    return NamedBytes.of(file, description.getBytes(UTF_8));
  }

  /** Whether nothing is left to be answered. */
  public boolean complete() {
    return inspection.complete() || inspection.sampled().isPresent();
  }

  /** What is to be answered, in the order of the text. */
  public List<DescriptionGap> gaps() {
    return gaps(text).all();
  }

  private DescriptionGaps gaps(String draft) {
    return new DescriptionGaps(
        draft,
        Importer.columns(export, ExportLayout.UNSTATED).stream().map(ColumnView::name).toList());
  }

  /** The text with answers in the place of its gaps, in their order. */
  public String answered(List<String> answers) {
    return gaps(text).filled(answers);
  }

  /** The names of its plates, in their order. */
  public List<String> plates() {
    return inspection.draft().plates().stream().map(PlateLayout::name).toList();
  }

  /** Its edges and measuring lines, as they are typed. */
  public PlateMeasures measures() {
    return PlateMeasures.of(inspection.draft());
  }

  /** The names of the lines that one can measure from. */
  public List<String> lines() {
    return inspection.draft().lines().stream().map(MeasuringLine::name).toList();
  }

  /**
   * The text with edges and measuring lines as they were typed.
   *
   * @param text as it was where something is wrong
   * @param faults what is wrong, by the names of the fields
   */
  public record WithMeasures(String text, Map<String, PlateMeasures.Fault> faults) {
    public WithMeasures {
      faults = Map.copyOf(faults);
    }
  }

  /** The text with edges and measuring lines; nothing is changed where something is wrong. */
  public WithMeasures with(PlateMeasures measures) {
    PlateMeasures.Applied applied = measures.to(inspection.draft());
    String measured =
        DescriptionWriter.write(applied.description(), List.of(), List.of(), problem -> "");
    return new WithMeasures(applied.faults().isEmpty() ? measured : text, applied.faults());
  }

  /** The finished description under a name: without the notes that led it. */
  public NamedBytes finished(String name) {
    PlateDescription draft = inspection.draft();
    PlateDescription called =
        new PlateDescription(
            name,
            draft.layout(),
            draft.time(),
            draft.axes(),
            draft.forceIs(),
            draft.plates(),
            draft.lines(),
            draft.accuracy(),
            draft.removeUnloadedOffset());
    return named(
        name + ".yaml", DescriptionWriter.write(called, List.of(), List.of(), problem -> ""));
  }
}
