/**
 * Proving a plate: what a known weight on marked places and a person who moves as asked show of a
 * plate's axes, signs, units and sides, and how well its centre of pressure is known. Pure. Entry
 * points: {@link caryatid.plate.ProofSheetReader}, {@link caryatid.plate.PlateTrial}. May use
 * {@code recording.model}, {@code sheet.yaml}, {@code geometry}, {@code uncertainty} and {@code
 * remark}.
 */
package caryatid.plate;
