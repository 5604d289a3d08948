package caryatid.samples;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import java.util.ArrayList;
import java.util.List;

/**
 * An export of two plates with German column names, y to the rear and the date above the table. The
 * invented wearer R3: transfemoral, right.
 */
public final class GermanPlates {
  private static final Axes AXES = new Axes(Direction.MINUS_X, Direction.MINUS_Y, Direction.PLUS_Z);
  private static final PlateModel.Vector ORIGIN = new PlateModel.Vector(0, 0, -42);
  private static final PlateModel LEFT = new PlateModel(AXES, true, -205, 0, ORIGIN);
  private static final PlateModel RIGHT = new PlateModel(AXES, true, 205, 0, ORIGIN);

  private GermanPlates() {}

  /**
   * The export's bytes.
   *
   * @param exchanged whether the plates' cables are exchanged
   * @param nmm how many N mm make one of the written numbers of moments, whatever unit is named
   * @param noise tells one stand from another
   */
  public static byte[] export(boolean exchanged, double nmm, long noise) {
    Foothold left = new Foothold(-108, 32, 1.36, People.UNDER_ONE_FOOT, 10, 8);
    Foothold right = new Foothold(110, -6, 0.5, People.UNDER_ONE_FOOT, -10, -8);
    Person person = new Person(80, People.foreAndAft(1.2), People.sideways(1.2), 0.45, left, right);
    Stand stand = Stand.of(person, 2000, 100, new Noise(noise));
    PlateModel.Reading[] one = LEFT.read(stand.left());
    PlateModel.Reading[] two = RIGHT.read(stand.right());
    List<ExportText.Column> columns = new ArrayList<>();
    columns.add(new ExportText.Column("Zeit (s)", "s", 2, i -> i / stand.rateHz()));
    columns.addAll(plate("Platte 1 ", exchanged ? two : one, nmm));
    columns.addAll(plate("Platte 2 ", exchanged ? one : two, nmm));
    List<String> above =
        List.of("Erfundene Aufnahme, keine wirkliche Person", "Datum;06.03.2026", "");
    return new ExportText(";", ',', above, false).write(columns, one.length);
  }

  private static List<ExportText.Column> plate(
      String before, PlateModel.Reading[] plate, double nmm) {
    return List.of(
        new ExportText.Column(before + "Kraft X", "N", 2, i -> plate[i].force().x()),
        new ExportText.Column(before + "Kraft Y", "N", 2, i -> plate[i].force().y()),
        new ExportText.Column(before + "Kraft Z", "N", 2, i -> plate[i].force().z()),
        new ExportText.Column(before + "Moment X", "", 3, i -> plate[i].moment().x() / nmm),
        new ExportText.Column(before + "Moment Y", "", 3, i -> plate[i].moment().y() / nmm),
        new ExportText.Column(before + "Moment Z", "", 3, i -> plate[i].moment().z() / nmm));
  }
}
