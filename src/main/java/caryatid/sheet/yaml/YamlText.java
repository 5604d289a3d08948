package caryatid.sheet.yaml;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Topic;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;

/** The text of a YAML file. */
final class YamlText {
  /**
   * Far more than a person writes. The YAML library's time grows with the square of a line's
   * length.
   */
  static final int MOST_BYTES = 100_000;

  private YamlText() {}

  /**
   * The file's text without a byte order mark.
   *
   * @throws BadInput if the file cannot be read, is too large, or is not UTF-8
   */
  static String of(NamedBytes yaml) throws BadInput {
    byte[] bytes = bytes(yaml);
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult end = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (end.isError()) {
      int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
      throw bad(Place.of(yaml.name(), line), YamlProblem.NOT_UTF8);
    }
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  private static byte[] bytes(NamedBytes yaml) throws BadInput {
    byte[] bytes;
    try {
      bytes = yaml.readAtMost(MOST_BYTES + 1);
    } catch (IOException e) {
      throw bad(Place.of(yaml.name()), YamlProblem.UNREADABLE);
    }
    if (bytes.length > MOST_BYTES) {
      throw bad(Place.of(yaml.name()), YamlProblem.TOO_LARGE);
    }
    return bytes;
  }

  static BadInput bad(Place place, Topic topic, Argument... arguments) {
    return new BadInput(Problem.at(place, topic, arguments));
  }
}
