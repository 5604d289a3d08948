package caryatid.spark;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.usecase.file.FileAccess;
import caryatid.usecase.file.Output;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileSystem;

/** The files below a folder of any file system that Hadoop knows: a disk's or an object store's. */
record ClusterFiles(String folder) implements FileAccess {
  private org.apache.hadoop.fs.Path at(String name) {
    return new org.apache.hadoop.fs.Path(folder, name.replace('\\', '/'));
  }

  private FileSystem system() throws IOException {
    return at("x").getFileSystem(new Configuration());
  }

  OutputStream create(String name) throws IOException {
    return system().create(at(name), true);
  }

  @Override
  public NamedBytes read(Path path) throws BadInput {
    try (InputStream in = system().open(at(path.toString()))) {
      return NamedBytes.of(path.toString(), in.readAllBytes());
    } catch (IOException e) {
      throw NamedBytes.of(path.toString(), new byte[0]).unreadable(e);
    }
  }

  @Override
  public Optional<NamedBytes> find(Path path) {
    try {
      return Optional.of(read(path));
    } catch (BadInput none) {
      return Optional.empty();
    }
  }

  @Override
  public void requireFree(Output output) {
    throw new UnsupportedOperationException();
  }

  @Override
  public void write(Output output, byte[] bytes) {
    throw new UnsupportedOperationException();
  }
}
