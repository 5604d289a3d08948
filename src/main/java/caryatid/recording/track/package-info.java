/**
 * What a table's columns mean, and from there to what each plate recorded: units, axes, load,
 * centre of pressure, and the checks of what was read. May use {@code model}, {@code table}, {@code
 * time}, {@code geometry} and {@code remark}.
 */
package caryatid.recording.track;
