package caryatid.store;

import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.List;
import java.util.Set;

/** The machine's file system under another provider. */
final class FaultyFileSystem extends FileSystem {
  private final FileSystem real;
  private final FileSystemProvider provider;

  FaultyFileSystem(FileSystem real, FileSystemProvider provider) {
    this.real = real;
    this.provider = provider;
  }

  @Override
  public FileSystemProvider provider() {
    return provider;
  }

  @Override
  public void close() {
    throw new UnsupportedOperationException();
  }

  @Override
  public boolean isOpen() {
    return real.isOpen();
  }

  @Override
  public boolean isReadOnly() {
    return real.isReadOnly();
  }

  @Override
  public String getSeparator() {
    return real.getSeparator();
  }

  @Override
  public Iterable<Path> getRootDirectories() {
    return List.of();
  }

  @Override
  public Iterable<FileStore> getFileStores() {
    return real.getFileStores();
  }

  @Override
  public Set<String> supportedFileAttributeViews() {
    return real.supportedFileAttributeViews();
  }

  @Override
  public Path getPath(String first, String... more) {
    return new FaultyPath(real.getPath(first, more), this);
  }

  @Override
  public PathMatcher getPathMatcher(String pattern) {
    return real.getPathMatcher(pattern);
  }

  @Override
  public UserPrincipalLookupService getUserPrincipalLookupService() {
    return real.getUserPrincipalLookupService();
  }

  @Override
  public WatchService newWatchService() {
    throw new UnsupportedOperationException();
  }
}
