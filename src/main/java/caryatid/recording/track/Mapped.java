package caryatid.recording.track;

import caryatid.geometry.Axis;
import caryatid.recording.table.Findings;
import caryatid.recording.table.PlatePlan;
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
    Map<PlatePlan, Optional<PlateUnits>> plates, Axis vertical, Findings findings) {
  public Mapped {
    plates = Collections.unmodifiableMap(new LinkedHashMap<>(plates));
  }

  /** There is no table. */
  public static Mapped none(Findings findings) {
    return new Mapped(Map.of(), Axis.Z, findings);
  }

  /** The plates that carry somebody. */
  public Map<PlatePlan, PlateUnits> loaded() {
    return loaded(plates);
  }

  /** Those plates that carry somebody. */
  public static Map<PlatePlan, PlateUnits> loaded(Map<PlatePlan, Optional<PlateUnits>> plates) {
    Map<PlatePlan, PlateUnits> loaded = new LinkedHashMap<>();
    plates.forEach((plan, known) -> known.ifPresent(units -> loaded.put(plan, units)));
    return Collections.unmodifiableMap(loaded);
  }
}
