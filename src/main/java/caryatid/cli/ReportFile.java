package caryatid.cli;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * A file to be written: whole or not at all, and never over another one unasked.
 *
 * @param path where it goes
 * @param replace whether it may replace one that is there
 */
record ReportFile(Path path, boolean replace) {

  /**
   * Refuses early, before any work is done, what could not be written later.
   *
   * @throws BadInput if a file is there already, or the folder is none
   */
  void check() throws BadInput {
    if (Files.exists(path) && !replace) {
      throw bad(path, Cli.OUTPUT_EXISTS);
    }
    Path folder = path.toAbsolutePath().getParent();
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw bad(folder, Cli.NOT_A_FOLDER);
    }
  }

  /**
   * Writes the file by way of a temporary one beside it.
   *
   * @throws BadInput if it cannot be written; nothing half-written is left
   */
  void write(byte[] bytes) throws BadInput {
    Path folder = path.toAbsolutePath().getParent();
    try {
      Files.createDirectories(folder);
      String name = "." + path.getFileName() + "." + ProcessHandle.current().pid() + ".part";
      Path part = folder.resolve(name);
      try {
        Files.write(part, bytes);
        move(part);
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (FileAlreadyExistsException e) {
      throw bad(path, Cli.OUTPUT_EXISTS);
    } catch (IOException e) {
      throw new BadInput(
          Problem.at(
              Place.of(path.toString()),
              Cli.CANNOT_WRITE,
              Argument.text(String.valueOf(e.getMessage()))));
    }
  }

  private void move(Path part) throws IOException {
    if (replace) {
      Files.move(part, path, StandardCopyOption.REPLACE_EXISTING);
    } else {
      Files.move(part, path);
    }
  }

  private static BadInput bad(Path path, Cli what) {
    return new BadInput(Problem.at(Place.of(path.toString()), what));
  }
}
