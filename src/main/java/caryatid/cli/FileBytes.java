package caryatid.cli;

import caryatid.recording.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A file as an input.
 *
 * @param path where it is
 */
record FileBytes(Path path) implements NamedBytes {

  /**
   * A file that exists and can be read.
   *
   * @throws BadInput if there is none, or it is a folder or something else that cannot be read
   */
  static FileBytes of(Path path) throws BadInput {
    if (!Files.exists(path)) {
      throw bad(path, Cli.NO_SUCH_FILE);
    }
    if (Files.isDirectory(path)) {
      throw bad(path, Cli.IS_A_FOLDER);
    }
    if (!Files.isRegularFile(path)) {
      throw bad(path, Cli.NO_ORDINARY_FILE);
    }
    if (!Files.isReadable(path)) {
      throw bad(path, Cli.NOT_READABLE);
    }
    return new FileBytes(path);
  }

  @Override
  public String name() {
    return path.toString();
  }

  @Override
  public InputStream open() throws IOException {
    return Files.newInputStream(path);
  }

  private static BadInput bad(Path path, Cli what) {
    return new BadInput(Problem.at(Place.of(path.toString()), what));
  }
}
