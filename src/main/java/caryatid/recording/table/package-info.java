/**
 * From a file's bytes to cells and columns of numbers: encoding, lines, delimiter, decimal mark,
 * head and rows. Entry point: {@link caryatid.recording.table.ExportText}. May use {@code model},
 * {@code geometry}, {@code remark}, Commons CSV and a parser of numbers.
 */
package caryatid.recording.table;
