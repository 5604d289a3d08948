package caryatid.usecase.file;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import java.nio.file.Path;
import java.util.Optional;

/** Where use cases read files and write what they make. */
public interface FileAccess {

  /**
   * A file that exists and can be read, under its path as its name.
   *
   * @throws BadInput if there is none, or it is a folder or something else that cannot be read
   */
  NamedBytes read(Path path) throws BadInput;

  /** An ordinary file, if one of that path exists. */
  Optional<NamedBytes> find(Path path);

  /**
   * Refuses early, before any work is done, what could not be written later.
   *
   * @throws BadInput if the file is there already and may not be replaced, or its folder is a file
   */
  void requireFree(Output output) throws BadInput;

  /**
   * Writes a file completely or not at all, and never over another one unasked.
   *
   * @throws BadInput if the file is there already and may not be replaced
   * @throws StoreFailure if it cannot be written; nothing half-written is left
   */
  void write(Output output, byte[] bytes) throws BadInput, StoreFailure;
}
