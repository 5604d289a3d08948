package caryatid.report;

import caryatid.remark.Topic;
import caryatid.remark.Weight;

/** What can be wrong with a result or a report that is read back. */
enum Archived implements Topic {
  /** Arguments: what the reader of JSON found. */
  NOT_JSON,
  /** Arguments: version found, version known. */
  OTHER_VERSION,
  /** Arguments: where in the result, the key. */
  UNKNOWN_KEY,
  /** Arguments: where in the result, the key. */
  MISSING_KEY,
  /** Arguments: where in the result, what was expected, what was found. */
  NOT_EXPECTED,
  /** Arguments: where in the result, what is wrong with the value. */
  OUT_OF_RANGE,
  /** Arguments: what the reader of PDF found. */
  NOT_A_PDF,
  /** Arguments: what is not inside. */
  NOT_INSIDE;

  @Override
  public Weight weight() {
    return Weight.IMPORTANT;
  }
}
