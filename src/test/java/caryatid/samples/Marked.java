package caryatid.samples;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A landmark that has a target in a trial sheet, where it truly is. The sheets say where it was
 * marked, which is a few millimetres beside it.
 *
 * @param sheet the trial sheet's file
 * @param plane the plane of the target
 * @param landmark its name in the sheet
 * @param coordinateMm its true place in the person's frame: anterior for the sagittal plane, to the
 *     right for the frontal plane, mm
 * @param person how the wearer stands on average in this state
 * @param side the prosthetic side
 * @param lowestMm smallest offset within the target's tolerance, mm
 * @param highestMm largest offset within it, mm
 */
record Marked(
    String sheet,
    Plane plane,
    String landmark,
    double coordinateMm,
    Person person,
    Side side,
    double lowestMm,
    double highestMm) {
  static final String HEADER =
      "sheet,plane,landmark,true-landmark-mm,true-offset-mm,whole-body-offset-mm,"
          + "lowest-mm,highest-mm,truly";

  /** All of them, in the order of sheets and targets. */
  static List<Marked> all() {
    List<Marked> all = new ArrayList<>(ofSamples());
    all.addAll(Story.marked());
    return List.copyOf(all);
  }

  private static List<Marked> ofSamples() {
    return List.of(
        k7("k7/barefoot.yaml", Plane.SAGITTAL, "knee centre", -34, K7.barefoot(), 5, 35),
        k7("k7/barefoot.yaml", Plane.FRONTAL, "outer patellar border", 70, K7.barefoot(), -65, -35),
        k7("k7/shoe.yaml", Plane.SAGITTAL, "knee centre", 5, K7.shoe(), 5, 35),
        k7("k7/shoe.yaml", Plane.FRONTAL, "outer patellar border", 70, K7.shoe(), -65, -35),
        m4("m4/barefoot.yaml", Plane.SAGITTAL, "knee centre", -26, M4.barefoot(), 5, 30),
        m4("m4/barefoot.yaml", Plane.FRONTAL, "foot reference point", -112, M4.barefoot(), -12, 12),
        m4("m4/shoe.yaml", Plane.SAGITTAL, "knee centre", 14, M4.shoe(), 5, 30),
        m4("m4/shoe.yaml", Plane.FRONTAL, "foot reference point", -112, M4.shoe(), -12, 12));
  }

  private static Marked k7(
      String sheet,
      Plane plane,
      String landmark,
      double mm,
      Person person,
      double low,
      double high) {
    return new Marked(sheet, plane, landmark, mm, person, Side.RIGHT, low, high);
  }

  private static Marked m4(
      String sheet,
      Plane plane,
      String landmark,
      double mm,
      Person person,
      double low,
      double high) {
    return new Marked(sheet, plane, landmark, mm, person, Side.LEFT, low, high);
  }

  /** The true offset of the prosthetic foot's load line in this state, mm. */
  double offsetMm() {
    Foothold foot = side == Side.LEFT ? person.left() : person.right();
    return plane == Plane.SAGITTAL
        ? foot.anteriorMm() - coordinateMm
        : outward(foot.rightMm() - coordinateMm);
  }

  /** The true offset of the whole body's line, mm: what it would be with the wrong line. */
  double wholeBodyOffsetMm() {
    return plane == Plane.SAGITTAL
        ? person.anteriorMm() - coordinateMm
        : outward(person.rightMm() - coordinateMm);
  }

  /** A line of the file. */
  String line() {
    boolean within = offsetMm() >= lowestMm && offsetMm() <= highestMm;
    return String.join(
        ",",
        sheet,
        plane.name().toLowerCase(Locale.ROOT),
        landmark,
        Digits.write(coordinateMm, 1),
        Digits.write(offsetMm(), 2),
        Digits.write(wholeBodyOffsetMm(), 2),
        Digits.write(lowestMm, 1),
        Digits.write(highestMm, 1),
        within ? "within" : "outside");
  }

  private double outward(double rightwardMm) {
    return side == Side.RIGHT ? rightwardMm : -rightwardMm;
  }
}
