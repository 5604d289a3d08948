package caryatid.web;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.usecase.file.FileProblem;
import caryatid.usecase.file.LocalFiles;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** A file on this computer whose path was typed, where the script that sends files does not run. */
final class PathField {
  private PathField() {}

  /**
   * The file.
   *
   * @param typed its path, perhaps in the quotation marks that a file manager puts around it
   * @throws BadInput if there is no such file
   */
  static NamedBytes read(String typed) throws BadInput {
    String path = typed.strip().replaceAll("^\"(.*)\"$", "$1");
    try {
      return new LocalFiles().read(Path.of(path));
    } catch (InvalidPathException e) {
      throw new BadInput(Problem.at(Place.of(path), FileProblem.NO_SUCH_FILE));
    }
  }
}
