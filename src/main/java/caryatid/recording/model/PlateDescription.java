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
    boolean removeUnloadedOffset) {
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

  /** The same description with other axes and plates. */
  public PlateDescription with(Optional<Axes> otherAxes, List<PlateLayout> otherPlates) {
    return new PlateDescription(
        name, layout, time, otherAxes, forceIs, otherPlates, lines, accuracy, removeUnloadedOffset);
  }
}
