/**
 * A workbook (.xlsx, ISO/IEC 29500) to the text of its sheets, with what text cannot show: hidden
 * and merged cells, formulas without a value, numbers kept as text. Entry point: {@link
 * caryatid.recording.workbook.Workbook}. May use {@code recording.model} and {@code remark}; reads
 * with the JDK's zip and XML streams.
 */
package caryatid.recording.workbook;
