package caryatid.recording.table;

/**
 * What a step of reading came to.
 *
 * @param value its result
 * @param findings what was found on the way
 */
public record Outcome<T>(T value, StageFindings findings) {}
