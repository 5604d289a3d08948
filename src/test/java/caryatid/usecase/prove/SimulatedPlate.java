package caryatid.usecase.prove;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.recording.model.NamedBytes;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * A plate whose export is computed here, by hand, from true places and forces (invented). It shows
 * a place by a map of its own, which a true description has as the identity.
 *
 * @param kind what it exports, and how its axes lie
 * @param map shown right and anterior of a true millimetre to the right, then of an anterior one,
 *     then of the zero
 * @param placeUnits how many of the described units of length, or of moments, the export writes for
 *     one of them
 * @param forceUnits the same of forces
 */
record SimulatedPlate(Kind kind, double[] map, double placeUnits, double forceUnits) {
  private static final double G = 9.80665;
  private static final double RATE_HZ = 100;
  private static final int SAMPLES = 300;

  /** Where the weight stands: four places about the middle and the middle. */
  private static final double[][] MARKS = {
    {-150, -200}, {150, -200}, {150, 200}, {-150, 200}, {0, 0}
  };

  /** What a plate exports. */
  enum Kind {
    /** Centre of pressure in mm, force in N, x to the right, y anterior. */
    PLAIN("+x", "+y", "+z", "N", "cop: mm", "cop-x: cx, cop-y: cy, force-z: fz"),
    /** Centre of pressure in cm, force in kg, y to the left, x anterior. */
    TURNED("-y", "+x", "+z", "kg", "cop: cm", "cop-x: cx, cop-y: cy, force-z: fz"),
    /** Forces and moments in N and N m on the plate, z down, y backward. */
    MOMENTS("+x", "-y", "-z", "N", "moment: N m", "force-z: fz, moment-x: mx, moment-y: my");

    final String right;
    final String anterior;
    final String up;
    private final String force;
    private final String places;
    private final String columns;

    Kind(String right, String anterior, String up, String force, String places, String columns) {
      this.right = right;
      this.anterior = anterior;
      this.up = up;
      this.force = force;
      this.places = places;
      this.columns = columns;
    }

    String description() {
      String origin = this == MOMENTS ? "    true-origin-mm: {x: 0, y: 0, z: 0}\n" : "";
      return """
          plate-description: 1
          name: Simulated plate (invented)
          time: {rate-hz: 100}
          axes: {right: %s, anterior: %s, up: %s}
          plates:
            - name: plate 1
              columns: {%s}
              units: {force: %s, %s}
              edges-mm: {left: -250, right: 250, rear: -300, front: 300}
          """
              .formatted(right, anterior, up, columns, force, places)
          + origin;
    }
  }

  static SimulatedPlate of(Kind kind, double... map) {
    return new SimulatedPlate(kind, map, 1, 1);
  }

  /** The description that is to be proven. */
  NamedBytes description() {
    return file("plate.yaml", kind.description());
  }

  /** What was done. */
  static NamedBytes sheet(double kg) {
    StringBuilder text = new StringBuilder();
    text.append("plate-proof: 1\nat: 2026-11-28T09:00+01:00\nby: AB\nplace-mm: 0.5\nweights:\n");
    for (int i = 0; i < MARKS.length; i++) {
      text.append(
          String.format(
              Locale.ROOT,
              "  - {recording: w%d.csv, right-mm: %.0f, anterior-mm: %.0f, kg: %.1f}%n",
              i,
              MARKS[i][0],
              MARKS[i][1],
              kg));
    }
    text.append("person: {standing: s.csv, leaning-forward: f.csv, one-foot: o.csv, foot: left}\n");
    return file("proof.yaml", text.toString());
  }

  /** All recordings; weights stand up to about a millimetre beside their marks. */
  Map<String, NamedBytes> recordings(double kg, long seed) {
    Random random = new Random(seed);
    Map<String, NamedBytes> files = new LinkedHashMap<>();
    for (int i = 0; i < MARKS.length; i++) {
      double right = MARKS[i][0] + 0.5 * random.nextGaussian();
      double anterior = MARKS[i][1] + 0.5 * random.nextGaussian();
      files.put("w" + i + ".csv", export("w" + i + ".csv", right, anterior, kg, 0.05, random));
    }
    files.put("s.csv", export("s.csv", 5, 20, 75, 3, random));
    files.put("f.csv", export("f.csv", 8, 75, 75, 3, random));
    files.put("o.csv", export("o.csv", -95, 10, 75, 3, random));
    return files;
  }

  static java.util.function.Function<String, Optional<NamedBytes>> finder(
      Map<String, NamedBytes> files) {
    return name -> Optional.ofNullable(files.get(name));
  }

  private NamedBytes export(
      String name, double right, double anterior, double kg, double swayMm, Random random) {
    StringBuilder text = new StringBuilder(kind == Kind.MOMENTS ? "fz,mx,my\n" : "cx,cy,fz\n");
    for (int i = 0; i < SAMPLES; i++) {
      double phase = 2 * Math.PI * i / RATE_HZ;
      double r = right + swayMm * Math.sin(0.7 * phase) + 0.1 * random.nextGaussian();
      double a = anterior + swayMm * Math.cos(0.7 * phase) + 0.1 * random.nextGaussian();
      double shownRight = map[0] * r + map[2] * a + map[4];
      double shownAnterior = map[1] * r + map[3] * a + map[5];
      double newton = kg * G * (1 + 0.0005 * random.nextGaussian());
      row(text, shownRight, shownAnterior, newton);
    }
    return file(name, text.toString());
  }

  private void row(StringBuilder text, double right, double anterior, double newton) {
    double[] cells =
        switch (kind) {
          case PLAIN ->
              new double[] {right * placeUnits, anterior * placeUnits, newton * forceUnits};
          case TURNED ->
              new double[] {
                anterior / 10 * placeUnits, -right / 10 * placeUnits, newton / G * forceUnits
              };
          // x and y of a load on the plate: -My/Fz and Mx/Fz; y points backward.
          case MOMENTS ->
              new double[] {
                newton * forceUnits,
                newton * -anterior / 1000 * placeUnits,
                newton * -right / 1000 * placeUnits
              };
        };
    text.append(String.format(Locale.ROOT, "%.6f,%.6f,%.6f%n", cells[0], cells[1], cells[2]));
  }

  private static NamedBytes file(String name, String text) {
    return NamedBytes.of(name, text.getBytes(UTF_8));
  }
}
