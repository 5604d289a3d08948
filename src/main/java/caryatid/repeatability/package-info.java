/**
 * What a clinic measures of its own hands: how well a landmark is marked, from the same landmarks
 * marked several times, and how far feet are turned on the plate, from several placements. Pure.
 * Entry points: {@link caryatid.repeatability.RepeatedMarks}, {@link
 * caryatid.repeatability.FeetPlacements}. May use {@code sheet.yaml}, {@code recording.model},
 * {@code uncertainty} and {@code remark}.
 */
package caryatid.repeatability;
