package caryatid.format;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import java.io.IOException;
import java.util.List;

/** A result's own members, with a reader for each version that was ever written. */
final class ResultForm {
  static final int VERSION = 2;
  static final String KEY = "version";

  private ResultForm() {}

  static void write(Result result, JsonObjectWriter out) throws IOException {
    out.whole(KEY, VERSION)
        .whole("method", result.method())
        .text("program", result.program())
        .object("state", result.state(), StateForm::write);
  }

  /**
   * Reads a result.
   *
   * @throws JsonMismatch if it is of no version this program knows, or not as that version is
   *     written
   */
  static Result read(JsonObjectReader in) {
    int version = in.whole(KEY);
    return switch (version) {
      case 1 -> readFirst(in);
      case VERSION -> readSecond(in);
      default ->
          throw new JsonMismatch(
              ArchiveProblem.OTHER_VERSION, Integer.toString(version), Integer.toString(VERSION));
    };
  }

  private static Result readSecond(JsonObjectReader in) {
    return new Result(in.whole("method"), in.text("program"), in.object("state", StateForm::read));
  }

  /** Version 1 knew no method, which was the first, and listed its state. */
  private static Result readFirst(JsonObjectReader in) {
    String program = in.text("program");
    List<AlignmentState> states = in.list("states", StateForm::read);
    if (states.size() != 1) {
      throw new IllegalArgumentException(states.size() + " states; one result holds one");
    }
    return new Result(1, program, states.get(0));
  }
}
