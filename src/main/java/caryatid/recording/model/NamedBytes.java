package caryatid.recording.model;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * An input: bytes that can be read from the start more than once, and the name the user gave them.
 */
public interface NamedBytes {

  /** The name as the user gave it; every problem states it. */
  String name();

  /**
   * The bytes from the start; the caller closes the stream.
   *
   * @throws IOException if they cannot be read
   */
  InputStream open() throws IOException;

  /**
   * All the bytes.
   *
   * @throws BadInput if they cannot be read
   */
  default byte[] readAll() throws BadInput {
    try (InputStream in = open()) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw unreadable(e);
    }
  }

  /**
   * The first bytes.
   *
   * @param most how many at most
   * @throws IOException if they cannot be read
   */
  default byte[] readAtMost(int most) throws IOException {
    try (InputStream in = open()) {
      return in.readNBytes(most);
    }
  }

  /** Why the input cannot be used after reading it failed. */
  default BadInput unreadable(IOException failure) {
    Argument reason = Argument.why(failure);
    return new BadInput(Problem.at(Place.of(name()), ImportProblem.UNREADABLE, reason));
  }

  /** Bytes held in memory; the array is not copied. */
  static NamedBytes of(String name, byte[] bytes) {
    return new NamedBytes() {
      @Override
      public String name() {
        return name;
      }

      @Override
      public InputStream open() {
        return new ByteArrayInputStream(bytes);
      }
    };
  }
}
