package caryatid.recording.table;

/**
 * The result of a stage of reading, with its findings.
 *
 * @param value its result
 * @param findings what was found on the way
 */
public record Outcome<T>(T value, StageFindings findings) {}
