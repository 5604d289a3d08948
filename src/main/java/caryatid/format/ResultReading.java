package caryatid.format;

import caryatid.alignment.Result;
import caryatid.remark.Problem;

/** The outcome of reading a result's file. Only a checksum can show that a file is damaged. */
public sealed interface ResultReading {

  /** It was read. */
  record Read(Result result) implements ResultReading {}

  /**
   * A newer version of the program wrote it, in a form this one does not know.
   *
   * @param problem says so
   */
  record Newer(Problem problem) implements ResultReading {}

  /**
   * It cannot be read.
   *
   * @param problem what stands in the way, and where
   */
  record Unreadable(Problem problem) implements ResultReading {}
}
