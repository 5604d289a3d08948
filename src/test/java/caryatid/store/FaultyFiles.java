package caryatid.store;

import java.io.IOException;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.spi.FileSystemProvider;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;

/** The machine's own files, with every write, sync, move and delete able to fail. */
final class FaultyFiles extends FileSystemProvider {
  private final FileSystemProvider real;
  private final Faults faults;
  private final FaultyFileSystem system;

  private FaultyFiles(FileSystem real, Faults faults) {
    this.real = real.provider();
    this.faults = faults;
    this.system = new FaultyFileSystem(real, this);
  }

  /** The same place, seen through files that can fail. */
  static Path of(Path path, Faults faults) {
    return new FaultyPath(path, new FaultyFiles(path.getFileSystem(), faults).system);
  }

  private static Path plain(Path path) {
    return FaultyPath.plain(path);
  }

  private static boolean writes(Set<? extends OpenOption> options) {
    return options.contains(StandardOpenOption.WRITE)
        || options.contains(StandardOpenOption.APPEND);
  }

  @Override
  public FileChannel newFileChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    if (writes(options)) {
      faults.step();
    }
    return new FaultyChannel(
        real.newFileChannel(plain(path), options, attributes), plain(path), faults);
  }

  @Override
  public SeekableByteChannel newByteChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    return newFileChannel(path, options, attributes);
  }

  @SuppressWarnings("StreamResourceLeak") // the stream given out closes it
  @Override
  public DirectoryStream<Path> newDirectoryStream(
      Path folder, DirectoryStream.Filter<? super Path> filter) throws IOException {
    DirectoryStream<Path> found = Files.newDirectoryStream(plain(folder));
    return new DirectoryStream<>() {
      @Override
      public Iterator<Path> iterator() {
        Iterator<Path> paths = found.iterator();
        return new Iterator<>() {
          @Override
          public boolean hasNext() {
            return paths.hasNext();
          }

          @Override
          public Path next() {
            return new FaultyPath(paths.next(), system);
          }
        };
      }

      @Override
      public void close() throws IOException {
        found.close();
      }
    };
  }

  @Override
  public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
    if (!Files.exists(plain(folder))) {
      faults.step();
    }
    real.createDirectory(plain(folder), attributes);
  }

  @Override
  public void delete(Path path) throws IOException {
    faults.step();
    real.delete(plain(path));
    faults.unforced().deleted(plain(path));
  }

  @Override
  public void copy(Path from, Path to, CopyOption... options) throws IOException {
    faults.step();
    Files.copy(plain(from), plain(to), options);
  }

  @Override
  public void move(Path from, Path to, CopyOption... options) throws IOException {
    faults.beforeMove(from.toString());
    faults.step();
    real.move(plain(from), plain(to), options);
    faults.unforced().moved(plain(from), plain(to));
  }

  @Override
  public boolean isSameFile(Path a, Path b) throws IOException {
    return real.isSameFile(plain(a), plain(b));
  }

  @Override
  public boolean isHidden(Path path) throws IOException {
    return real.isHidden(plain(path));
  }

  @Override
  public FileStore getFileStore(Path path) throws IOException {
    return real.getFileStore(plain(path));
  }

  @Override
  public void checkAccess(Path path, AccessMode... modes) throws IOException {
    real.checkAccess(plain(path), modes);
  }

  @Override
  public <V extends FileAttributeView> V getFileAttributeView(
      Path path, Class<V> type, LinkOption... options) {
    return real.getFileAttributeView(plain(path), type, options);
  }

  @Override
  public <A extends BasicFileAttributes> A readAttributes(
      Path path, Class<A> type, LinkOption... options) throws IOException {
    return real.readAttributes(plain(path), type, options);
  }

  @Override
  public Map<String, Object> readAttributes(Path path, String attributes, LinkOption... options)
      throws IOException {
    return real.readAttributes(plain(path), attributes, options);
  }

  @Override
  public void setAttribute(Path path, String attribute, Object value, LinkOption... options)
      throws IOException {
    real.setAttribute(plain(path), attribute, value, options);
  }

  @Override
  public String getScheme() {
    return "faulty";
  }

  @Override
  public FileSystem newFileSystem(URI uri, Map<String, ?> environment) {
    throw new UnsupportedOperationException();
  }

  @Override
  public FileSystem getFileSystem(URI uri) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Path getPath(URI uri) {
    throw new UnsupportedOperationException();
  }
}
