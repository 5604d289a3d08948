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
  /** The name of a result's file; also where problems are said to be. */
  public static final String FILE_NAME = "result.json";

  private ResultJson() {}

  /** A result as UTF-8 JSON, indented, with a line end at its end. */
  public static byte[] write(Result result) {
    return JsonText.write(result, ResultForm::write);
  }

  /**
   * Reads a result.
   *
   * @throws BadInput if the bytes are not a result of the version this program writes; unknown,
   *     doubled and missing keys are refused
   */
  public static Result read(byte[] json) throws BadInput {
    try {
      return ObjectIn.read(JsonText.read(json), "result", ResultForm::read);
    } catch (Misread e) {
      throw new BadInput(
          Problem.at(Place.of(FILE_NAME), e.topic(), e.arguments().toArray(Argument[]::new)));
    }
  }
}
