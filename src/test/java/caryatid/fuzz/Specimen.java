package caryatid.fuzz;

import caryatid.blackbox.Run;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A sample recording with its sheet and description.
 *
 * @param sound what is found in it as it is
 */
record Specimen(Path recording, Path sheet, Path plate, PlainReading reading, FuzzFailures sound) {
  private static final Path K7 = Path.of("sample-recordings/k7");

  /** One exported as centre of pressure and vertical force. */
  static Specimen pressure() throws IOException {
    return of("shoe.csv", "shoe.yaml", "plate-pressure.yaml", PlainReading.PRESSURE);
  }

  /** One exported as forces and moments. */
  static Specimen forces() throws IOException {
    return of("barefoot-1.csv", "barefoot.yaml", "plate.yaml", PlainReading.FORCES);
  }

  private static Specimen of(String recording, String sheet, String plate, PlainReading reading) {
    Path export = K7.resolve(recording);
    Run run = Run.caryatid(command(export, K7.resolve(sheet), K7.resolve(plate)));
    return new Specimen(
        export, K7.resolve(sheet), K7.resolve(plate), reading, FuzzFailures.in(run.out()));
  }

  String[] check(Path spoilt) {
    return command(spoilt, sheet, plate);
  }

  String[] checkWith(Path spoilt, boolean ofSheet) {
    return command(recording, ofSheet ? spoilt : sheet, ofSheet ? plate : spoilt);
  }

  private static String[] command(Path recording, Path sheet, Path plate) {
    return new String[] {
      "check",
      recording.toString(),
      "--trial",
      sheet.toString(),
      "--plate",
      plate.toString(),
      "--json"
    };
  }

  /**
   * Whether each offset moved as the rows of the spoilt recording say when they are read plainly.
   */
  boolean justifies(Path spoilt, FuzzFailures found) throws IOException {
    Optional<double[]> before = reading.centre(recording, sound.fromS(), sound.toS());
    Optional<double[]> after = reading.centre(spoilt, found.fromS(), found.toS());
    return after.isPresent()
        && sound.offsetsMm().keySet().stream()
            .allMatch(name -> explained(name, found, before.orElseThrow(), after.get()));
  }

  /** Lateral of the right leg is to the right. */
  private boolean explained(String name, FuzzFailures found, double[] before, double[] after) {
    int axis = name.startsWith("frontal") ? 0 : 1;
    return Math.abs(sound.moved(found, name) - (after[axis] - before[axis]))
        < FuzzFailures.MOVED_MM;
  }
}
