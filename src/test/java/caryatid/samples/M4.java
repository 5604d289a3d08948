package caryatid.samples;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The invented wearer M4: transfemoral, left; one plate under each foot. */
final class M4 {
  private static final Axes AXES = new Axes(Direction.PLUS_Z, Direction.PLUS_X, Direction.PLUS_Y);
  private static final PlateModel.Vector ORIGIN = new PlateModel.Vector(0, -45, 0);
  private static final PlateModel LEFT = new PlateModel(AXES, false, -205, 0, ORIGIN);
  private static final PlateModel RIGHT = new PlateModel(AXES, false, 205, 0, ORIGIN);

  private M4() {}

  /** Barefoot. */
  static Person barefoot() {
    return person(74, new Foothold(-115, -8, 0.5, People.UNDER_ONE_FOOT, 11, -7));
  }

  /** In a shoe whose heel the ankle was not set for. */
  static Person shoe() {
    return person(75, new Foothold(-114, -4, 0.5, People.UNDER_ONE_FOOT, 11, -9));
  }

  private static Person person(double massKg, Foothold left) {
    Foothold right = new Foothold(112, 34, 1.36, People.UNDER_ONE_FOOT, -11, 7);
    return new Person(massKg, People.foreAndAft(1.2), People.sideways(1.2), 0.58, left, right);
  }

  /** The recordings by name; the truth about them is added to a list. */
  static Map<String, byte[]> recordings(List<Truth> truth) {
    Map<String, byte[]> files = new TreeMap<>();
    Noise noise = new Noise(4);
    StepOn steps = new StepOn(2.5, 32, 40);
    Stand barefoot =
        steps.around(
            Stand.of(barefoot().movedBy(-0.7, 1.4), 3400, 100, noise.split()), noise.split());
    truth.addAll(Truth.of("m4/barefoot.txt", barefoot(), barefoot, 8, 32));
    files.put("m4/barefoot.txt", twoPlates(barefoot, "barefoot, step on and off"));
    Stand shoe = Stand.of(shoe().movedBy(0.4, -1.1), 2500, 100, noise.split());
    truth.addAll(Truth.of("m4/shoe.txt", shoe(), shoe, 0, 25));
    files.put("m4/shoe.txt", twoPlates(shoe, "shoe"));
    return files;
  }

  private static byte[] twoPlates(Stand stand, String trial) {
    PlateModel.Reading[] left = LEFT.read(stand.left());
    PlateModel.Reading[] right = RIGHT.read(stand.right());
    List<ExportText.Column> columns = new ArrayList<>();
    columns.add(new ExportText.Column("Time (s)", "s", 2, i -> i / stand.rateHz()));
    columns.addAll(Columns.forceAndMoment("P1 ", left, 2, 1000, 4));
    columns.addAll(Columns.forceAndMoment("P2 ", right, 2, 1000, 4));
    List<String> preamble =
        List.of(
            "Invented recording, no real person",
            "Trial\tM4 " + trial,
            "Rate\t100 Hz",
            "Plates\t2",
            "");
    return new ExportText("\t", '.', preamble, false).write(columns, left.length);
  }
}
