package caryatid.usecase.stand;

/**
 * A recording drawn over time, with what it takes to set the stretch on it by hand.
 *
 * @param svg the drawing, as an element of a page
 * @param axisFrom where time 0 is, as a part of the drawing's width
 * @param axisTo where the recording ends, as a part of the drawing's width
 * @param seconds how long the recording is
 * @param fromS where the stretch that is used begins, s
 * @param toS where it ends, s
 */
public record DrawnOverTime(
    String svg, double axisFrom, double axisTo, double seconds, double fromS, double toS) {}
