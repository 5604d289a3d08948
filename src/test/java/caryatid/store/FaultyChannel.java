package caryatid.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Path;

/**
 * A channel whose writes, syncs and truncations can fail; a write that fails leaves a part behind.
 */
final class FaultyChannel extends FileChannel {
  private final FileChannel real;
  private final Path path;
  private final Faults faults;

  FaultyChannel(FileChannel real, Path path, Faults faults) {
    this.real = real;
    this.path = path;
    this.faults = faults;
  }

  @Override
  public int write(ByteBuffer bytes) throws IOException {
    try {
      faults.step();
    } catch (IOException e) {
      real.write(bytes.slice(bytes.position(), bytes.remaining() / 2));
      throw e;
    }
    faults.unforced().written(path);
    return real.write(bytes);
  }

  @Override
  public long write(ByteBuffer[] bytes, int from, int count) throws IOException {
    faults.step();
    faults.unforced().written(path);
    return real.write(bytes, from, count);
  }

  @Override
  public int write(ByteBuffer bytes, long position) throws IOException {
    faults.step();
    faults.unforced().written(path);
    return real.write(bytes, position);
  }

  @Override
  public void force(boolean metadata) throws IOException {
    faults.step();
    real.force(metadata);
    faults.unforced().forced(path);
  }

  @Override
  public FileChannel truncate(long size) throws IOException {
    faults.step();
    real.truncate(size);
    faults.unforced().written(path);
    return this;
  }

  @Override
  public int read(ByteBuffer bytes) throws IOException {
    return real.read(bytes);
  }

  @Override
  public long read(ByteBuffer[] bytes, int from, int count) throws IOException {
    return real.read(bytes, from, count);
  }

  @Override
  public int read(ByteBuffer bytes, long position) throws IOException {
    return real.read(bytes, position);
  }

  @Override
  public long position() throws IOException {
    return real.position();
  }

  @Override
  public FileChannel position(long position) throws IOException {
    real.position(position);
    return this;
  }

  @Override
  public long size() throws IOException {
    return real.size();
  }

  @Override
  public long transferTo(long position, long count, WritableByteChannel to) throws IOException {
    return real.transferTo(position, count, to);
  }

  @Override
  public long transferFrom(ReadableByteChannel from, long position, long count) throws IOException {
    faults.step();
    return real.transferFrom(from, position, count);
  }

  @Override
  public MappedByteBuffer map(MapMode mode, long position, long size) {
    throw new UnsupportedOperationException();
  }

  @Override
  public FileLock lock(long position, long size, boolean shared) throws IOException {
    return real.lock(position, size, shared);
  }

  @Override
  public FileLock tryLock(long position, long size, boolean shared) throws IOException {
    return real.tryLock(position, size, shared);
  }

  @Override
  protected void implCloseChannel() throws IOException {
    real.close();
  }
}
