/**
 * From a text export to a validated {@link caryatid.recording.Recording}: millimetres, newtons,
 * seconds, person's frame, with provenance and remarks. Entry point: {@link
 * caryatid.recording.Importer}. May use {@code geometry}, {@code remark} and Commons CSV.
 */
package caryatid.recording;
