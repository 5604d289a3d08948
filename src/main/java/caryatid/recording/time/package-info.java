/**
 * From a table's times or sample numbers, or a stated rate, to even times. Entry point: {@link
 * caryatid.recording.time.TimeBaseFinder}. May use {@code model}, {@code table} and {@code remark}.
 */
package caryatid.recording.time;
