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
  /** Arguments: field, its unit, the unit in which the item is set. */
  OTHER_UNIT("EntryQuestion.OTHER_UNIT"),
  /** Arguments: landmark, by how much the legs differ, by how much they are meant to. */
  LEGS_DIFFER("EntryQuestion.LEGS_DIFFER"),
  /** Arguments: heel height set, heel height wanted. */
  OWN_SETTING_DIFFERS("EntryQuestion.OWN_SETTING_DIFFERS"),
  /** Arguments: field, its heel height, the stand's entry, the heel height there. */
  HEEL_OF_STAND("EntryQuestion.HEEL_OF_STAND"),
  /** Arguments: field, the name, the name in the record that is like it. */
  NEARLY_FASTENER("EntryQuestion.NEARLY_FASTENER"),
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
