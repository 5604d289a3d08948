package caryatid.recording.track;

import caryatid.geometry.Axis;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.StageFindings;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The second stage: what a table's columns mean.
 *
 * @param plates all plates, in their order, with what is known of their units; empty for a plate
 *     that carries nobody
 * @param vertical the export's vertical axis, as described or as it seems
 * @param findings what was found on the way, and what is asked
 */
public record Mapped(
    Map<PlateColumns, Optional<PlateUnits>> plates, Axis vertical, StageFindings findings) {
  public Mapped {
    plates = Collections.unmodifiableMap(new LinkedHashMap<>(plates));
  }

  /** There is no table. */
  public static Mapped none(StageFindings findings) {
    return new Mapped(Map.of(), Axis.Z, findings);
  }

  /** The plates that carry somebody. */
  public Map<PlateColumns, PlateUnits> loaded() {
    return loaded(plates);
  }

  /** Those plates that carry somebody. */
  public static Map<PlateColumns, PlateUnits> loaded(
      Map<PlateColumns, Optional<PlateUnits>> plates) {
    Map<PlateColumns, PlateUnits> loaded = new LinkedHashMap<>();
    plates.forEach((plan, known) -> known.ifPresent(units -> loaded.put(plan, units)));
    return Collections.unmodifiableMap(loaded);
  }
}
