package caryatid.format;

import caryatid.alignment.Result;
import java.io.IOException;

/** A result's own members. */
final class ResultForm {
  private static final int VERSION = 1;
  private static final String KEY = "version";

  private ResultForm() {}

  static void write(Result result, ObjectOut out) throws IOException {
    out.whole(KEY, VERSION)
        .text("program", result.program())
        .list("states", result.states(), StateForm::write);
  }

  /**
   * Reads a result.
   *
   * @throws Misread if it is of another version, or not as that version is written
   */
  static Result read(ObjectIn in) {
    int version = in.whole(KEY);
    if (version != VERSION) {
      throw new Misread(
          Archived.OTHER_VERSION, Integer.toString(version), Integer.toString(VERSION));
    }
    return new Result(version, in.text("program"), in.list("states", StateForm::read));
  }
}
