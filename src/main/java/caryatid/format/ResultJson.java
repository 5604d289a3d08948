package caryatid.format;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.io.IOException;
import java.util.List;

/**
 * A result as JSON and back, without loss: what is read equals what was written, and the same
 * result gives the same bytes. The form is described in {@code docs/result.md}.
 */
public final class ResultJson {
  /** The name of a result's file, which problems name as their place. */
  public static final String FILE_NAME = "result.json";

  private static final String AT = "result";

  private ResultJson() {}

  /** A result as UTF-8 JSON, indented, with a line end at its end. */
  public static byte[] write(Result result) {
    return ResultTree.write(result, WholeResult::write);
  }

  /** Reads a file that should hold a result. */
  public static ResultReading open(byte[] json) {
    try {
      JsonValue value = ResultTree.read(json);
      return isNewer(value)
          ? new ResultReading.Newer(Problem.at(Place.of(FILE_NAME), ArchiveProblem.NEWER_VERSION))
          : new ResultReading.Read(JsonObjectReader.read(value, AT, WholeResult::read));
    } catch (JsonMismatch e) {
      return new ResultReading.Unreadable(
          Problem.at(Place.of(FILE_NAME), e.topic(), e.arguments().toArray(Argument[]::new)));
    }
  }

  /** Whatever else a newer version may have changed, its number is where it always was. */
  private static boolean isNewer(JsonValue value) {
    return value instanceof JsonValue.Group group
        && group.members().get(WholeResult.KEY) instanceof JsonValue.Number version
        && version.written().matches("[1-9]\\d*")
        && (version.written().length() > 9
            || Integer.parseInt(version.written()) > WholeResult.VERSION);
  }

  /**
   * Reads a result.
   *
   * @throws BadInput if the bytes are not a result of a version this program knows; unknown,
   *     doubled and missing keys are refused
   */
  public static Result read(byte[] json) throws BadInput {
    ResultReading file = open(json);
    if (file instanceof ResultReading.Read read) {
      return read.result();
    }
    throw new BadInput(
        file instanceof ResultReading.Newer newer
            ? newer.problem()
            : ((ResultReading.Unreadable) file).problem());
  }

  /** A result's own members, with a reader for each version that was ever written. */
  private static final class WholeResult {
    static final int VERSION = 2;
    static final String KEY = "version";

    private WholeResult() {}

    static void write(Result result, JsonObjectWriter out) throws IOException {
      out.whole(KEY, VERSION)
          .whole("method", result.method())
          .text("program", result.program())
          .object("earlier", result.earlier(), EarlierStatesJson::writeInside)
          .object("state", result.state(), StateJson::write);
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
      return new Result(
          in.whole("method"),
          in.text("program"),
          in.object("state", StateJson::read),
          in.objectIfThere("earlier", EarlierStatesJson::readInside));
    }

    /** Version 1 knew no method, which was the first, and listed its state. */
    private static Result readFirst(JsonObjectReader in) {
      String program = in.text("program");
      List<AlignmentState> states = in.list("states", StateJson::read);
      if (states.size() != 1) {
        throw new IllegalArgumentException(states.size() + " states; one result holds one");
      }
      return new Result(1, program, states.get(0));
    }
  }
}
