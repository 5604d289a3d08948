package caryatid.recording.importer;

import caryatid.recording.model.Inspection;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads the export of {@link LargeExport} and nothing else, for measuring by hand (see
 * DEVELOPERS.md): every row into numbers, units, times, centre of pressure and all the checks of an
 * import; no words, no report.
 */
final class LargeRead {
  private LargeRead() {}

  /** Takes the file. */
  public static void main(String[] args) throws BadInput {
    Path file = Path.of(args[0]);
    Inspection inspection = Importer.inspect(bytes(file), Optional.of(Described.usual()));
    if (!inspection.problems().isEmpty() || !inspection.questions().isEmpty()) {
      throw new BadInput(inspection.problems());
    }
    System.out.println(inspection.plates().get(0).loaded().get(0).toRow());
  }

  private static NamedBytes bytes(Path file) {
    return new NamedBytes() {
      @Override
      public String name() {
        return file.toString();
      }

      @Override
      public InputStream open() throws IOException {
        return Files.newInputStream(file);
      }
    };
  }
}
