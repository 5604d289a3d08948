package caryatid.usecase.file;

import caryatid.disk.DurableFiles;
import caryatid.disk.FilePermissions;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Files on this computer. */
public final class LocalFiles implements FileAccess {

  private record OnDisk(Path path) implements NamedBytes {
    @Override
    public String name() {
      return path.toString();
    }

    @Override
    public InputStream open() throws IOException {
      return Files.newInputStream(path);
    }
  }

  @Override
  public NamedBytes read(Path path) throws BadInput {
    if (Files.notExists(path)) {
      throw bad(path, FileProblem.NO_SUCH_FILE);
    }
    if (!Files.exists(path)) {
      throw bad(path, FileProblem.NOT_READABLE);
    }
    if (Files.isDirectory(path)) {
      throw bad(path, FileProblem.IS_A_FOLDER);
    }
    if (!Files.isRegularFile(path)) {
      throw bad(path, FileProblem.NO_ORDINARY_FILE);
    }
    if (!Files.isReadable(path)) {
      throw bad(path, FileProblem.NOT_READABLE);
    }
    return new OnDisk(path);
  }

  @Override
  public Optional<NamedBytes> find(Path path) {
    return Files.isRegularFile(path) ? Optional.of(new OnDisk(path)) : Optional.empty();
  }

  @Override
  public void requireFree(Output output) throws BadInput {
    if (Files.exists(output.path()) && !output.replace()) {
      throw bad(output.path(), FileProblem.OUTPUT_EXISTS);
    }
    Path folder = folder(output);
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw bad(folder, FileProblem.NOT_A_FOLDER);
    }
  }

  /** Writes a temporary file in the same folder and renames it once it is on the disk. */
  @Override
  public void write(Output output, byte[] bytes) throws BadInput, StoreFailure {
    Path path = output.path();
    try {
      FilePermissions.createPrivateFolder(folder(output));
      DurableFiles.write(path, out -> out.write(bytes), output.replace());
    } catch (FileAlreadyExistsException e) {
      throw bad(path, FileProblem.OUTPUT_EXISTS);
    } catch (IOException e) {
      Argument reason = Argument.why(e);
      throw new StoreFailure(
          Problem.at(Place.of(path.toString()), FileProblem.CANNOT_WRITE, reason));
    }
  }

  private static Path folder(Output output) {
    return output.path().toAbsolutePath().getParent();
  }

  private static BadInput bad(Path path, FileProblem what) {
    return new BadInput(Problem.at(Place.of(path.toString()), what));
  }
}
