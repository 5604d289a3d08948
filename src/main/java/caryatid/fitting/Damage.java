package caryatid.fitting;

import caryatid.remark.Topic;

/** What can be wrong with a file of a record. */
enum Damage implements Topic {
  /** Its bytes are not those that were added. */
  CHANGED,
  MISSING,
  UNREADABLE,
  /** An inventory and its sum file do not fit together. */
  INVENTORY,
  /** A sum file holds no sum. */
  SUM_FILE,
  /** An entry does not fit its schema. */
  ENTRY,
  /** The entry of a version is not there. */
  NO_ENTRY,
  /** The library's validator found something. */
  STRUCTURE
}
