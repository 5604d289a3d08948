package caryatid.recording.table;

import caryatid.remark.Coded;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;

/**
 * Finds a text's encoding from its first bytes: by its byte order mark, by the zeros of UTF-16,
 * else UTF-8 where that is well formed and Latin-1 where it is not.
 *
 * @param charset the encoding
 * @param markBytes length of the byte order mark, 0 to 3
 */
record Encoding(Charset charset, int markBytes) {
  private record ByteOrderMark(Charset charset, String hex) {
    int length() {
      return hex.length() / 2;
    }

    boolean leads(byte[] text) {
      return text.length >= length() && HexFormat.of().formatHex(text, 0, length()).equals(hex);
    }
  }

  /** What an encoding was known by. */
  enum Sign implements Coded {
    MARK("Sign.MARK"),
    ZEROS("Sign.ZEROS"),
    WELL_FORMED("Sign.WELL_FORMED"),
    LEFT_OVER("Sign.LEFT_OVER");

    private final String code;

    Sign(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  private static final List<ByteOrderMark> MARKS =
      List.of(
          new ByteOrderMark(StandardCharsets.UTF_8, "efbbbf"),
          new ByteOrderMark(StandardCharsets.UTF_16LE, "fffe"),
          new ByteOrderMark(StandardCharsets.UTF_16BE, "feff"));

  static Encoding of(byte[] start) {
    return MARKS.stream()
        .filter(mark -> mark.leads(start))
        .findFirst()
        .map(mark -> new Encoding(mark.charset(), mark.length()))
        .orElseGet(() -> new Encoding(withoutMark(start), 0));
  }

  /** The encoding a description states; a byte order mark is still left out. */
  static Encoding stated(Charset charset, byte[] start) {
    Encoding seen = of(start);
    return new Encoding(charset, seen.markBytes());
  }

  /** What it was known by. */
  Sign sign() {
    if (markBytes > 0) {
      return Sign.MARK;
    }
    if (!singleByteDigits()) {
      return Sign.ZEROS;
    }
    return charset.equals(StandardCharsets.UTF_8) ? Sign.WELL_FORMED : Sign.LEFT_OVER;
  }

  /** Whether delimiters, digits and line ends are single bytes, as in ASCII. */
  boolean singleByteDigits() {
    return !charset.name().startsWith("UTF-16") && !charset.name().startsWith("UTF-32");
  }

  private static Charset withoutMark(byte[] start) {
    if (start.length >= 4 && start[1] == 0 && start[3] == 0 && start[0] != 0) {
      return StandardCharsets.UTF_16LE;
    }
    if (start.length >= 4 && start[0] == 0 && start[2] == 0 && start[1] != 0) {
      return StandardCharsets.UTF_16BE;
    }
    return wellFormed(start) ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1;
  }

  private static boolean wellFormed(byte[] start) {
    int end = start.length;
    // The last character may be cut by the end of what was read.
    while (end > 0 && end > start.length - 4 && start[end - 1] < 0) {
      end--;
    }
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(start, 0, end));
      return true;
    } catch (CharacterCodingException e) {
      return false;
    }
  }
}
