package caryatid.samples;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The invented wearer K7: transtibial, right; the prosthetic foot on one plate, the sound foot on a
 * block to its left.
 */
final class K7 {
  private static final PlateModel PLATE =
      new PlateModel(
          new Axes(Direction.PLUS_X, Direction.PLUS_Y, Direction.PLUS_Z),
          true,
          0,
          0,
          new PlateModel.Vector(0.5, -1, -40));
  private static final double[][] BAREFOOT_TRIES_MM = {{1.2, -2.1}, {-0.8, 1.7}, {-0.5, 0.6}};
  private static final double[] BAREFOOT_SECONDS = {18, 20, 17};
  private static final double[] SHOE_TRY_MM = {0.6, 1.5};

  private K7() {}

  /** Barefoot: inside the tolerance of the invented instructions. */
  static Person barefoot() {
    return person(82, new Foothold(18, -12, 0.6, People.UNDER_ONE_FOOT, 9, -6));
  }

  /** In a shoe whose heel the ankle was not set for. */
  static Person shoe() {
    return person(83, new Foothold(17, -10, 0.6, People.UNDER_ONE_FOOT, 9, -8));
  }

  /** K7, with the prosthetic foot standing so. */
  static Person person(double massKg, Foothold right) {
    Foothold left = new Foothold(-228, 26, 1.33, People.UNDER_ONE_FOOT, -9, 6);
    return new Person(massKg, People.foreAndAft(1.1), People.sideways(1.1), 0.45, left, right);
  }

  /** The recordings by name; the truth about them is added to a list. */
  static Map<String, byte[]> recordings(List<Truth> truth) {
    Map<String, byte[]> files = new TreeMap<>();
    Noise noise = new Noise(7);
    for (int i = 0; i < BAREFOOT_TRIES_MM.length; i++) {
      String name = "k7/barefoot-" + (i + 1) + ".csv";
      int samples = (int) (BAREFOOT_SECONDS[i] * 100);
      Person now = barefoot().movedBy(BAREFOOT_TRIES_MM[i][0], BAREFOOT_TRIES_MM[i][1]);
      Stand stand = Stand.of(now, samples, 100, noise.split());
      truth.addAll(Truth.of(name, barefoot(), stand, 0, BAREFOOT_SECONDS[i]));
      files.put(name, sixChannels(stand));
    }
    Person now = shoe().movedBy(SHOE_TRY_MM[0], SHOE_TRY_MM[1]);
    Stand stand = Stand.of(now, 20_000, 1000, noise.split());
    truth.addAll(Truth.of("k7/shoe.csv", shoe(), stand, 0, 20));
    files.put("k7/shoe.csv", pressure(stand));
    return files;
  }

  static byte[] sixChannels(Stand stand) {
    PlateModel.Reading[] plate = PLATE.read(stand.right());
    List<ExportText.Column> columns = new ArrayList<>();
    columns.add(new ExportText.Column("Time", "s", 2, i -> i / stand.rateHz()));
    columns.addAll(Columns.forceAndMoment("", plate, 2, 1, 1));
    return new ExportText(";", ',', List.of(), false).write(columns, plate.length);
  }

  private static byte[] pressure(Stand stand) {
    PlateModel.Reading[] plate = PLATE.read(stand.right());
    List<ExportText.Column> columns =
        List.of(
            new ExportText.Column("Time", "s", 3, i -> i / stand.rateHz()),
            new ExportText.Column("Fz", "N", 2, i -> plate[i].force().z()),
            new ExportText.Column("CoPx", "mm", 3, i -> plate[i].pressure().x()),
            new ExportText.Column("CoPy", "mm", 3, i -> plate[i].pressure().y()));
    return new ExportText(",", '.', List.of(), true).write(columns, plate.length);
  }
}
