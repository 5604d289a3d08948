package caryatid.alignment;

import caryatid.loadline.Offset;
import java.util.Optional;

/**
 * Where a load line runs past a landmark in one alignment state, as a mean of the state's stands.
 *
 * @param offset the offset of the state: the stands' mean, with what differs from stand to stand
 * @param smallestDifferenceMm the smallest difference between this and another state, measured
 *     alike with the landmarks marked anew, that is not put down to chance at 95 %, mm
 * @param hint what would reduce its uncertainty; empty if nothing is uncertain
 */
public record StateOffset(
    Offset offset, double smallestDifferenceMm, Optional<PrecisionHint> hint) {}
