/**
 * The YAML files a clinician writes: trial sheets and plate descriptions, read by walking their
 * nodes so that every problem has its line and column. Entry points: {@link
 * caryatid.sheet.TrialSheetReader}, {@link caryatid.sheet.DescriptionReader}. May use {@code
 * geometry}, {@code remark}, {@code uncertainty} and the records of {@code recording}, {@code
 * standing} and {@code loadline}; the YAML library.
 */
package caryatid.sheet;
