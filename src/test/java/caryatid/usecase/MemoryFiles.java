package caryatid.usecase;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.usecase.file.FileAccess;
import caryatid.usecase.file.FileProblem;
import caryatid.usecase.file.LocalFiles;
import caryatid.usecase.file.Output;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Reads samples from the disk, and keeps what is written in memory. */
final class MemoryFiles implements FileAccess {
  private final FileAccess local = new LocalFiles();
  private final Map<Path, byte[]> made = new HashMap<>();

  /** What was written. */
  byte[] made(Path path) {
    return made.get(path);
  }

  @Override
  public NamedBytes read(Path path) throws BadInput {
    return made.containsKey(path) ? of(path) : local.read(path);
  }

  @Override
  public Optional<NamedBytes> find(Path path) {
    return made.containsKey(path) ? Optional.of(of(path)) : local.find(path);
  }

  private NamedBytes of(Path path) {
    return NamedBytes.of(path.toString(), made.get(path));
  }

  @Override
  public void requireFree(Output output) throws BadInput {
    if (made.containsKey(output.path()) && !output.replace()) {
      throw new BadInput(Problem.at(Place.of(output.path().toString()), FileProblem.OUTPUT_EXISTS));
    }
  }

  @Override
  public void write(Output output, byte[] bytes) throws BadInput {
    requireFree(output);
    made.put(output.path(), bytes);
  }
}
