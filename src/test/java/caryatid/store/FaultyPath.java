package caryatid.store;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;

/**
 * A path of the machine's under another file system.
 *
 * @param real the machine's own
 * @param system the other file system
 */
record FaultyPath(Path real, FaultyFileSystem system) implements Path {

  static Path plain(Path path) {
    return path instanceof FaultyPath faulty ? faulty.real : path;
  }

  private Path like(Path path) {
    return path == null ? null : new FaultyPath(path, system);
  }

  @Override
  public FileSystem getFileSystem() {
    return system;
  }

  @Override
  public boolean isAbsolute() {
    return real.isAbsolute();
  }

  @Override
  public Path getRoot() {
    return like(real.getRoot());
  }

  @Override
  public Path getFileName() {
    return like(real.getFileName());
  }

  @Override
  public Path getParent() {
    return like(real.getParent());
  }

  @Override
  public int getNameCount() {
    return real.getNameCount();
  }

  @Override
  public Path getName(int index) {
    return like(real.getName(index));
  }

  @Override
  public Path subpath(int from, int to) {
    return like(real.subpath(from, to));
  }

  @Override
  public boolean startsWith(Path other) {
    return real.startsWith(plain(other));
  }

  @Override
  public boolean endsWith(Path other) {
    return real.endsWith(plain(other));
  }

  @Override
  public Path normalize() {
    return like(real.normalize());
  }

  @Override
  public Path resolve(Path other) {
    return like(real.resolve(plain(other)));
  }

  @Override
  public Path relativize(Path other) {
    return like(real.relativize(plain(other)));
  }

  @Override
  public URI toUri() {
    return real.toUri();
  }

  @Override
  public Path toAbsolutePath() {
    return like(real.toAbsolutePath());
  }

  @Override
  public File toFile() {
    return real.toFile();
  }

  @Override
  public Path toRealPath(LinkOption... options) throws IOException {
    return like(real.toRealPath(options));
  }

  @Override
  public WatchKey register(
      WatchService watcher, WatchEvent.Kind<?>[] events, WatchEvent.Modifier... modifiers) {
    throw new UnsupportedOperationException();
  }

  @Override
  public int compareTo(Path other) {
    return real.compareTo(plain(other));
  }

  @Override
  public String toString() {
    return real.toString();
  }
}
