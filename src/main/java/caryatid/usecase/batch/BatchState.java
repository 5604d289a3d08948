package caryatid.usecase.batch;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.usecase.Inputs;
import caryatid.usecase.file.FileAccess;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One state of a batch.
 *
 * @param name the name it has in the table; a path inside a folder, with slashes
 * @param recordings its exports, in the order of their names
 * @param sheet its trial sheet
 * @param plate its plate description, where the exports need one
 * @param problems why it cannot be checked, as far as that is known before anything is read
 */
public record BatchState(
    String name, List<Path> recordings, Path sheet, Optional<Path> plate, List<Problem> problems) {
  public BatchState {
    recordings = List.copyOf(recordings);
    problems = List.copyOf(problems);
  }

  /**
   * What it is checked from.
   *
   * @throws BadInput if it cannot be checked, or a file cannot be read
   */
  public Inputs inputs(FileAccess files) throws BadInput {
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    List<NamedBytes> exports = new ArrayList<>();
    for (Path recording : recordings) {
      exports.add(files.read(recording));
    }
    Optional<NamedBytes> description =
        plate.isPresent() ? Optional.of(files.read(plate.get())) : Optional.empty();
    return new Inputs(exports, files.read(sheet), description, name -> beside(files, name));
  }

  private Optional<NamedBytes> beside(FileAccess files, String name) {
    try {
      return files.find(sheet.resolveSibling(name));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }
}
