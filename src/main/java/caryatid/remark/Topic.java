package caryatid.remark;

/**
 * What a problem or a remark is about. Implemented by enums, whose constants state their codes: the
 * sentence for a topic is found by its code, and files hold it.
 */
public interface Topic extends Coded {

  /** How much the topic matters to the reader; a note unless the enum says otherwise. */
  default Weight weight() {
    return Weight.NOTE;
  }

  /** Whether somebody may come to harm. */
  default boolean isSafety() {
    return weight() == Weight.SAFETY;
  }

  /** Whether an answer to it holds for all stands of a wearer on one plate and one day. */
  default boolean holdsForSession() {
    return false;
  }
}
