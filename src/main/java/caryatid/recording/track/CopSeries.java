package caryatid.recording.track;

import caryatid.recording.table.SampleSeries;
import java.util.Optional;

/**
 * A centre of pressure, one number a sample along the person's directions, mm.
 *
 * @param right to the right; empty where the plate measures fore and aft only
 * @param anterior forward
 */
record CopSeries(Optional<SampleSeries> right, SampleSeries anterior) {}
