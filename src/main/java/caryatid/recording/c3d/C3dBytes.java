package caryatid.recording.c3d;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

/** A file's bytes, read within their bounds. */
final class C3dBytes {
  /** Bytes of a block, in which the file counts its sections. */
  static final int BLOCK = 512;

  private final byte[] bytes;
  private final Processor processor;

  C3dBytes(byte[] bytes, Processor processor) {
    this.bytes = bytes;
    this.processor = processor;
  }

  int size() {
    return bytes.length;
  }

  int unsigned8(int at) throws C3dFault {
    check(at, 1);
    return bytes[at] & 0xff;
  }

  int signed8(int at) throws C3dFault {
    check(at, 1);
    return bytes[at];
  }

  int unsigned16(int at) throws C3dFault {
    check(at, 2);
    return processor.unsigned16(bytes, at);
  }

  int signed16(int at) throws C3dFault {
    return (short) unsigned16(at);
  }

  double real(int at) throws C3dFault {
    check(at, 4);
    return processor.real(bytes, at);
  }

  /** Text without what pads it. */
  String text(int at, int length) throws C3dFault {
    check(at, length);
    String text = new String(bytes, at, length, ISO_8859_1);
    int end = text.indexOf('\0');
    return (end < 0 ? text : text.substring(0, end)).strip();
  }

  /** Whether two stretches hold the same bytes. */
  boolean same(int one, int other, int length) throws C3dFault {
    check(one, length);
    check(other, length);
    for (int i = 0; i < length; i++) {
      if (bytes[one + i] != bytes[other + i]) {
        return false;
      }
    }
    return true;
  }

  /** That so many bytes are there. */
  void check(long at, long length) throws C3dFault {
    if (at < 0 || length < 0 || at + length > bytes.length) {
      throw C3dFault.damaged("byte " + at);
    }
  }
}
