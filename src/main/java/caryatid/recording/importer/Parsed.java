package caryatid.recording.importer;

import caryatid.recording.table.Findings;
import caryatid.recording.table.Table;
import java.util.Optional;

/**
 * The first stage: a file's bytes read into tables, of which one holds the plate.
 *
 * @param table that one; empty, with a problem, where none does
 * @param shown that one, or else the first
 * @param findings what was found on the way
 */
record Parsed(Optional<Table> table, Optional<Table> shown, Findings findings) {}
