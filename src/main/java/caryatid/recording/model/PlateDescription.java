package caryatid.recording.model;

import caryatid.geometry.Axes;
import caryatid.remark.Coded;
import java.util.List;
import java.util.Optional;

/**
 * What a plate's export means, written once per plate.
 *
 * @param name the clinic's name for the plate
 * @param layout how the text is laid out
 * @param time where times come from
 * @param axes how the export's axes lie in the person's frame
 * @param forceIs on whom the exported force acts
 * @param plates the plates; empty when the file's own names say enough
 * @param lines the lines from which the clinician measures
 * @param accuracy how far the plate can be trusted; empty when not stated
 * @param removeUnloadedOffset whether what the unloaded plate shows is subtracted
 * @param proof what weights and a person showed of it; empty where that was not tried
 */
public record PlateDescription(
    String name,
    ExportLayout layout,
    TimeBase time,
    Optional<Axes> axes,
    Optional<ForceIs> forceIs,
    List<PlateLayout> plates,
    List<MeasuringLine> lines,
    Optional<PlateAccuracy> accuracy,
    boolean removeUnloadedOffset,
    Optional<PlateProof> proof) {
  /** On whom the exported force acts. */
  public enum ForceIs implements Coded {
    /** Reaction: the vertical force of a standing person points up. */
    ON_THE_PERSON("ForceIs.ON_THE_PERSON"),
    /** Action: the vertical force of a standing person points down. */
    ON_THE_PLATE("ForceIs.ON_THE_PLATE");

    private final String code;

    ForceIs(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  public PlateDescription {
    plates = List.copyOf(plates);
    lines = List.copyOf(lines);
  }

  /** A description without a proof. */
  public PlateDescription(
      String name,
      ExportLayout layout,
      TimeBase time,
      Optional<Axes> axes,
      Optional<ForceIs> forceIs,
      List<PlateLayout> plates,
      List<MeasuringLine> lines,
      Optional<PlateAccuracy> accuracy,
      boolean removeUnloadedOffset) {
    this(
        name,
        layout,
        time,
        axes,
        forceIs,
        plates,
        lines,
        accuracy,
        removeUnloadedOffset,
        Optional.empty());
  }

  /** How far the plates can be trusted: as proven, else as stated, else as assumed. */
  public PlateAccuracy known() {
    return proof.map(PlateProof::accuracy).or(() -> accuracy).orElse(PlateAccuracy.ASSUMED);
  }

  /** The same description with other axes and plates, for which no proof holds. */
  public PlateDescription with(Optional<Axes> otherAxes, List<PlateLayout> otherPlates) {
    return new PlateDescription(
        name, layout, time, otherAxes, forceIs, otherPlates, lines, accuracy, removeUnloadedOffset);
  }

  /** The same description without the plates' edges, for which no proof holds. */
  public PlateDescription withoutEdges() {
    return with(axes, plates.stream().map(PlateLayout::withoutEdges).toList());
  }
}
