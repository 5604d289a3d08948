package caryatid.store;

import caryatid.remark.Topic;

/** Why the store could not do something with its records. */
enum StoreProblem implements Topic {
  /** A folder of records that is to be shared, but is there already. */
  SHARED_LATE("Keeping.SHARED_LATE"),
  /** Arguments: the link, in a record that is to be erased. */
  LINKED("Keeping.LINKED"),
  NO_SUCH_RECORD("Keeping.NO_SUCH_RECORD"),
  RECORD_EXISTS("Keeping.RECORD_EXISTS"),
  ERASED_EXISTS("Keeping.ERASED_EXISTS"),
  IN_USE("Keeping.IN_USE"),
  CANNOT_WRITE("Keeping.CANNOT_WRITE"),
  /** The addition is complete, but the disk reported an error. */
  WRITTEN_BUT("Keeping.WRITTEN_BUT"),
  CANNOT_READ("Keeping.CANNOT_READ"),
  DAMAGED("Keeping.DAMAGED"),
  /** Arguments: the entry that holds the same stand. */
  EXACT_DOUBLE("Keeping.EXACT_DOUBLE"),
  NOTHING_TO_BACK_UP("Keeping.NOTHING_TO_BACK_UP"),
  BACKUP_THERE("Keeping.BACKUP_THERE"),
  /** Records are restored to where none are. */
  NOT_EMPTY("Keeping.NOT_EMPTY"),
  NO_BACKUP("Keeping.NO_BACKUP"),
  NOT_IN_BACKUP("Keeping.NOT_IN_BACKUP"),
  MISSING_IN_BACKUP("Keeping.MISSING_IN_BACKUP"),
  CHANGED_IN_BACKUP("Keeping.CHANGED_IN_BACKUP");

  private final String code;

  StoreProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
