package caryatid.chart.mark;

import java.util.Collection;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * A true scale: the same in both directions.
 *
 * @param oneTo how many millimetres of the person one millimetre of paper stands for
 * @param origin where across 0 meets the floor
 */
public record Scale(double oneTo, PaperPoint origin) {
  private static final double[] CHOICES = {
    0.05, 0.1, 0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 25, 30, 40, 50, 100,
    200, 500
  };

  /** A place in a view: across and above the floor, mm of the person. */
  public record PersonPoint(double acrossMm, double heightMm) {}

  /**
   * The largest scale at which places fit a room, the floor at its bottom, their middle in its
   * middle.
   *
   * @throws IllegalArgumentException if the places fit at no scale
   */
  public static Scale fitting(Collection<PersonPoint> places, Box room) {
    return fitting(places, room, 0);
  }

  /**
   * The largest scale not above another.
   *
   * @param least one to so many at the least
   */
  public static Scale fitting(Collection<PersonPoint> places, Box room, double least) {
    double left = across(places).min().orElse(0);
    double right = across(places).max().orElse(0);
    double top = places.stream().mapToDouble(PersonPoint::heightMm).max().orElse(1);
    double oneTo =
        DoubleStream.of(CHOICES)
            .filter(c -> c >= least)
            .filter(c -> (right - left) / c <= room.widthMm() && top / c <= room.heightMm())
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("too large to draw: " + top + " mm"));
    double middle = (room.leftMm() + room.rightMm()) / 2;
    return new Scale(oneTo, new PaperPoint(middle - (left + right) / 2 / oneTo, room.bottomMm()));
  }

  /**
   * The largest scale at which places fit a room, their middle in its middle in both directions.
   */
  public static Scale centred(Collection<PersonPoint> places, Box room) {
    double low = places.stream().mapToDouble(PersonPoint::heightMm).min().orElse(0);
    List<PersonPoint> raised =
        places.stream().map(p -> new PersonPoint(p.acrossMm(), p.heightMm() - low)).toList();
    Scale onFloor = fitting(raised, room);
    double top = raised.stream().mapToDouble(PersonPoint::heightMm).max().orElse(0);
    double free = room.heightMm() - top / onFloor.oneTo;
    return new Scale(onFloor.oneTo, onFloor.origin.moved(0, low / onFloor.oneTo - free / 2));
  }

  /** The scale as it is written: {@code 1 : 7}, or {@code 2 : 1} for what is enlarged. */
  public String words() {
    return oneTo < 1 ? Math.round(1 / oneTo) + " : 1" : "1 : " + Math.round(oneTo);
  }

  private static DoubleStream across(Collection<PersonPoint> places) {
    return places.stream().mapToDouble(PersonPoint::acrossMm);
  }

  public PaperPoint spot(PersonPoint place) {
    return spot(place.acrossMm(), place.heightMm());
  }

  public PaperPoint spot(double acrossMm, double heightMm) {
    return new PaperPoint(rightMm(acrossMm), downMm(heightMm));
  }

  /** Where a place so far across is on paper, mm from the drawing's left edge. */
  public double rightMm(double acrossMm) {
    return origin.rightMm() + acrossMm / oneTo;
  }

  /** Where a place so high is on paper, mm from the drawing's top edge. */
  public double downMm(double heightMm) {
    return origin.downMm() + -heightMm / oneTo;
  }
}
