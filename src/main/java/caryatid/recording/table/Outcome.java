package caryatid.recording.table;

/**
 * The result of a stage of reading, with its messages.
 *
 * @param value its result
 * @param messages what was found on the way
 */
public record Outcome<T>(T value, StageMessages messages) {}
