package caryatid.format;

import caryatid.alignment.Result;
import caryatid.remark.Problem;

/** What came of reading a result's file. That a file is damaged only its checksum can tell. */
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
