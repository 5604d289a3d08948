package caryatid.recording;

/**
 * What a step of reading came to.
 *
 * @param value its result
 * @param findings what was found on the way
 */
record Outcome<T>(T value, Findings findings) {}
