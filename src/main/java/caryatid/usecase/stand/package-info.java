/**
 * A stand as it is typed beside the wearer: a draft on the disk, the trial sheet made of it, and
 * drawings of what was found so far. Entry points: {@link caryatid.usecase.stand.StandDraft},
 * {@link caryatid.usecase.stand.DraftedStand}. May use {@code usecase} and what it uses.
 */
package caryatid.usecase.stand;
