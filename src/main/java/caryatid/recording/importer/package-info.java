/**
 * From a text export to a validated recording, in stages: parsed, mapped, timed, plates. Entry
 * point: {@link caryatid.recording.importer.Importer}. May use the other packages of {@code
 * recording}, {@code geometry} and {@code remark}.
 */
package caryatid.recording.importer;
