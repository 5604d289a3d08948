package caryatid.recording.importer;

import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.StageFindings;
import java.util.Optional;

/**
 * The first stage: a file's bytes read into tables, of which one holds the plate.
 *
 * @param table that one; empty, with a problem, where none does
 * @param shown that one, or else the first
 * @param findings what was found on the way
 */
record Parsed(Optional<ParsedTable> table, Optional<ParsedTable> shown, StageFindings findings) {}
