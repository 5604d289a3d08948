package caryatid.usecase.batch;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.file.FileAccess;
import caryatid.usecase.file.Output;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Semaphore;

/**
 * Files for a batch that checks so many states at a time: while one waits until its file is on the
 * disk, another takes its turn.
 */
record FreeWhileWriting(FileAccess files, Semaphore turns) implements FileAccess {
  /** Does something as soon as it has a turn. */
  <T> T take(Callable<T> work) throws Exception {
    turns.acquire();
    try {
      return work.call();
    } finally {
      turns.release();
    }
  }

  @Override
  public NamedBytes read(Path path) throws BadInput {
    return files.read(path);
  }

  @Override
  public Optional<NamedBytes> find(Path path) {
    return files.find(path);
  }

  @Override
  public void requireFree(Output output) throws BadInput {
    files.requireFree(output);
  }

  @Override
  public void write(Output output, byte[] bytes) throws BadInput, StoreFailure {
    turns.release();
    try {
      files.write(output, bytes);
    } finally {
      turns.acquireUninterruptibly();
    }
  }
}
