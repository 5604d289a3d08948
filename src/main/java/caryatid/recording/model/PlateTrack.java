package caryatid.recording.model;

import java.util.Optional;

/**
 * What one plate recorded, in the person's frame; forces are those on the person. All series have
 * the recording's length.
 *
 * @param plate the plate's name in the description, or {@code plate 1} and so on
 * @param copRightMm centre of pressure to the person's right of the origin, mm; empty where the
 *     plate measures fore and aft only
 * @param copAnteriorMm centre of pressure anterior to the origin, mm
 * @param upN vertical force, N, positive when the plate carries the person; empty for a recording
 *     of the centre of pressure alone
 * @param horizontal horizontal force; empty where none was recorded
 * @param usable which samples can be used
 */
public record PlateTrack(
    String plate,
    Optional<Samples> copRightMm,
    Samples copAnteriorMm,
    Optional<Samples> upN,
    Optional<Horizontal> horizontal,
    UsableMask usable) {}
