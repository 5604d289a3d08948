package caryatid.chart;

import java.util.Collection;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * A true scale: the same in both directions.
 *
 * @param oneTo how many millimetres of the person one millimetre of paper stands for
 * @param origin where across 0 meets the floor
 */
record Scale(int oneTo, Spot origin) {
  private static final int[] CHOICES = {
    1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 25, 30, 40, 50, 100, 200, 500
  };

  /** A place in a view: across and above the floor, mm of the person. */
  record Place(double acrossMm, double heightMm) {}

  /**
   * The largest scale at which places fit a room, the floor at its bottom, their middle in its
   * middle.
   *
   * @throws IllegalArgumentException if the places fit at no scale
   */
  static Scale fitting(Collection<Place> places, Box room) {
    return fitting(places, room, 0);
  }

  /**
   * The largest scale not above another.
   *
   * @param least one to so many at the least
   */
  static Scale fitting(Collection<Place> places, Box room, int least) {
    double left = across(places).min().orElse(0);
    double right = across(places).max().orElse(0);
    double top = places.stream().mapToDouble(Place::heightMm).max().orElse(1);
    int oneTo =
        IntStream.of(CHOICES)
            .filter(c -> c >= least)
            .filter(c -> (right - left) / c <= room.widthMm() && top / c <= room.heightMm())
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("too large to draw: " + top + " mm"));
    double middle = (room.leftMm() + room.rightMm()) / 2;
    return new Scale(oneTo, new Spot(middle - (left + right) / 2 / oneTo, room.bottomMm()));
  }

  /**
   * The largest scale at which places fit a room, their middle in its middle in both directions.
   */
  static Scale centred(Collection<Place> places, Box room) {
    double low = places.stream().mapToDouble(Place::heightMm).min().orElse(0);
    List<Place> raised =
        places.stream().map(p -> new Place(p.acrossMm(), p.heightMm() - low)).toList();
    Scale onFloor = fitting(raised, room);
    double top = raised.stream().mapToDouble(Place::heightMm).max().orElse(0);
    double free = room.heightMm() - top / onFloor.oneTo;
    return new Scale(onFloor.oneTo, onFloor.origin.moved(0, low / onFloor.oneTo - free / 2));
  }

  private static DoubleStream across(Collection<Place> places) {
    return places.stream().mapToDouble(Place::acrossMm);
  }

  Spot spot(Place place) {
    return spot(place.acrossMm(), place.heightMm());
  }

  Spot spot(double acrossMm, double heightMm) {
    return origin.moved(acrossMm / oneTo, -heightMm / oneTo);
  }
}
