package caryatid.format;

import caryatid.alignment.Result;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;

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
    return JsonText.write(result, ResultForm::write);
  }

  /** Reads a file that should hold a result. */
  public static ResultReading open(byte[] json) {
    try {
      JsonValue value = JsonText.read(json);
      return isNewer(value)
          ? new ResultReading.Newer(Problem.at(Place.of(FILE_NAME), ArchiveProblem.NEWER_VERSION))
          : new ResultReading.Read(JsonObjectReader.read(value, AT, ResultForm::read));
    } catch (JsonMismatch e) {
      return new ResultReading.Unreadable(
          Problem.at(Place.of(FILE_NAME), e.topic(), e.arguments().toArray(Argument[]::new)));
    }
  }

  /** Whatever else a newer version may have changed, its number is where it always was. */
  private static boolean isNewer(JsonValue value) {
    return value instanceof JsonValue.Group group
        && group.members().get(ResultForm.KEY) instanceof JsonValue.Number version
        && version.written().matches("[1-9]\\d*")
        && (version.written().length() > 9
            || Integer.parseInt(version.written()) > ResultForm.VERSION);
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
}
