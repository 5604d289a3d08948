package caryatid.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

/**
 * A zip's central directory (APPNOTE.TXT 6.3, sections 4.3.12 and 4.3.16), read by this class
 * because the JDK's reader does not show which entries are links. Zips of more than 65,534 files or
 * 4 GB (zip64) are not read.
 */
final class ZipDirectory {
  private static final int END_SIGNATURE = 0x06054b50;
  private static final int END_LENGTH = 22;
  private static final int LONGEST_COMMENT = 0xffff;
  private static final int FILE_SIGNATURE = 0x02014b50;
  private static final int FILE_LENGTH = 46;
  private static final int UNIX_TYPE = 0xf000;
  private static final int UNIX_FILE = 0x8000;
  private static final int UNIX_FOLDER = 0x4000;

  private ZipDirectory() {}

  /**
   * A name in the directory.
   *
   * @param name as it stands there
   * @param size its length unpacked, as the directory has it
   * @param plain whether it is an ordinary file or folder: no link, no device
   * @param encrypted whether it is encrypted
   */
  record ListedFile(String name, long size, boolean plain, boolean encrypted) {}

  /**
   * Reads the directory.
   *
   * @throws IOException if there is none, or it is damaged
   */
  static List<ListedFile> read(Path zip) throws IOException {
    try (FileChannel channel = FileChannel.open(zip, StandardOpenOption.READ)) {
      ByteBuffer end = end(channel);
      int count = end.getShort(10) & 0xffff;
      long length = end.getInt(12) & 0xffffffffL;
      long start = end.getInt(16) & 0xffffffffL;
      if (start + length > channel.size() || count == 0xffff) {
        throw new IOException("no directory");
      }
      return files(read(channel, start, (int) length), count);
    } catch (IndexOutOfBoundsException | IllegalArgumentException e) {
      throw new IOException("damaged directory", e);
    }
  }

  private static ByteBuffer end(FileChannel channel) throws IOException {
    int length = (int) Math.min(channel.size(), END_LENGTH + LONGEST_COMMENT);
    ByteBuffer tail = read(channel, channel.size() - length, length);
    for (int at = length - END_LENGTH; at >= 0; at--) {
      if (tail.getInt(at) == END_SIGNATURE) {
        return tail.slice(at, length - at).order(ByteOrder.LITTLE_ENDIAN);
      }
    }
    throw new IOException("no end of a directory");
  }

  private static List<ListedFile> files(ByteBuffer directory, int count) throws IOException {
    List<ListedFile> files = new ArrayList<>();
    int at = 0;
    for (int i = 0; i < count; i++) {
      if (directory.getInt(at) != FILE_SIGNATURE) {
        throw new IOException("damaged directory");
      }
      int name = directory.getShort(at + 28) & 0xffff;
      files.add(file(directory, at, name));
      int extra = directory.getShort(at + 30) & 0xffff;
      int comment = directory.getShort(at + 32) & 0xffff;
      at += FILE_LENGTH + name + extra + comment;
    }
    return files;
  }

  private static ListedFile file(ByteBuffer directory, int at, int nameLength) {
    byte[] name = new byte[nameLength];
    directory.get(at + FILE_LENGTH, name);
    boolean encrypted = (directory.getShort(at + 8) & 1) != 0;
    int type = directory.getInt(at + 38) >>> 16 & UNIX_TYPE;
    boolean plain = type == 0 || type == UNIX_FILE || type == UNIX_FOLDER;
    long size = directory.getInt(at + 24) & 0xffffffffL;
    return new ListedFile(new String(name, StandardCharsets.UTF_8), size, plain, encrypted);
  }

  private static ByteBuffer read(FileChannel channel, long from, int length) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    while (bytes.hasRemaining()) {
      if (channel.read(bytes, from + bytes.position()) < 0) {
        throw new IOException("cut short");
      }
    }
    return bytes.flip();
  }
}
