package caryatid.recording.model;

import caryatid.geometry.Side;

/**
 * A marker on a leg, in the person's frame, from the same zero as the plates; heights are above the
 * plates' top.
 *
 * @param name as it stands in the file
 * @param side the side its name says
 * @param point the place its name says
 * @param rateHz frames in a second, above 0
 * @param rightMm one a frame; 0 where it was not seen
 * @param anteriorMm likewise
 * @param upMm likewise
 * @param seen in which frames it was seen
 */
public record MarkerTrack(
    String name,
    Side side,
    BodyPoint point,
    double rateHz,
    Samples rightMm,
    Samples anteriorMm,
    Samples upMm,
    UsableMask seen) {}
