package caryatid.store;

import caryatid.remark.Topic;

/** What can be wrong with a file of a record. */
enum Damage implements Topic {
  /** Its bytes are not those that were added. */
  CHANGED("Damage.CHANGED"),
  MISSING("Damage.MISSING"),
  UNREADABLE("Damage.UNREADABLE"),
  /** An inventory and its sum file do not fit together. */
  INVENTORY("Damage.INVENTORY"),
  /** A sum file holds no sum. */
  SUM_FILE("Damage.SUM_FILE"),
  /** An entry does not fit its schema. */
  ENTRY("Damage.ENTRY"),
  /** The entry of a version is not there. */
  NO_ENTRY("Damage.NO_ENTRY"),
  /**
   * An inventory does not list versions that are there. Arguments: its newest, the newest there.
   */
  OLDER("Damage.OLDER"),
  /** A record's folder holds another record. Arguments: which. */
  OTHER_RECORD("Damage.OTHER_RECORD"),
  /** A link in the place of a file or folder. */
  LINK("Damage.LINK"),
  /** Not what the folder of records says of itself: its declaration or its layout. */
  ROOT("Damage.ROOT"),
  /** The library's validator found something. */
  STRUCTURE("Damage.STRUCTURE");

  private final String code;

  Damage(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
