package caryatid.entry;

import caryatid.remark.Topic;

/** What has to be confirmed of an entry, and what cannot be. */
public enum EntryQuestion implements Topic {
  /** Arguments: field, what it says, limits. */
  ODD_SETTING("EntryQuestion.ODD_SETTING"),
  /** The same; refused. */
  IMPOSSIBLE_SETTING("EntryQuestion.IMPOSSIBLE_SETTING"),
  /** Arguments: field, what it says, what is recommended. */
  FAR_FROM_RECOMMENDED("EntryQuestion.FAR_FROM_RECOMMENDED"),
  /** Arguments: landmark, left, right. */
  ODD_LENGTH("EntryQuestion.ODD_LENGTH"),
  /** The same; refused. */
  IMPOSSIBLE_LENGTH("EntryQuestion.IMPOSSIBLE_LENGTH"),
  /** Arguments: field, the next visit's day, the entry's day. */
  NEXT_VISIT_BEFORE("EntryQuestion.NEXT_VISIT_BEFORE"),
  /** Arguments: field, what was written, the known word that is like it. */
  NEARLY_KNOWN("EntryQuestion.NEARLY_KNOWN");

  private final String code;

  EntryQuestion(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
