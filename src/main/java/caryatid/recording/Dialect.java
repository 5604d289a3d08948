package caryatid.recording;

/** How a table's rows are written. */
record Dialect(Delimiter delimiter, DecimalMark mark) {}
