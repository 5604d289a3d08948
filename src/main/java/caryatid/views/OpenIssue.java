package caryatid.views;

import caryatid.remark.Topic;
import caryatid.remark.Weight;

/** What a record leaves open. */
enum OpenIssue implements Topic {
  /** Arguments: entry that changed the alignment, entry of the last stand. */
  CHANGED_SINCE("Open.CHANGED_SINCE"),
  /** Arguments: entry of the bench alignment. */
  NO_FASTENERS("Open.NO_FASTENERS"),
  /** Arguments: plane, side, landmark, entry and footwear, result. */
  NOT_WITHIN("Open.NOT_WITHIN"),
  /** Arguments: the same, and the entry that changed the alignment since. */
  NOT_WITHIN_THEN("Open.NOT_WITHIN_THEN"),
  /**
   * Arguments: plane, side, landmark, the lock and the words that the target is valid for, entry,
   * how the wearer stood: footwear, lock, mode.
   */
  VALID_FOR("Open.VALID_FOR"),
  /** Arguments: entry, what is next. */
  NEXT_STEP("Open.NEXT_STEP"),
  /** Arguments: entry, successes, attempts, what. */
  OWN_SETTING("Open.OWN_SETTING"),
  /** Arguments: entry, shoe. */
  SHOE_NOT_STOOD_IN("Open.SHOE_NOT_STOOD_IN"),
  /** Arguments: stand, the earlier stand with the same recordings, the recordings' names. */
  SAME_RECORDING("Open.SAME_RECORDING");

  private final String code;

  OpenIssue(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public Weight weight() {
    return this == NO_FASTENERS || this == CHANGED_SINCE ? Weight.SAFETY : Weight.IMPORTANT;
  }
}
