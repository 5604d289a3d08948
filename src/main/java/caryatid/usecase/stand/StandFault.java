package caryatid.usecase.stand;

import caryatid.remark.Topic;

/** What can be wrong with a drafted stand besides its sheet and its recordings. */
enum StandFault implements Topic {
  /** Argument: the recording. */
  STRETCH_REVERSED("StandFault.STRETCH_REVERSED"),
  /** Argument: the recording. */
  NO_SECONDS("StandFault.NO_SECONDS"),
  /** Arguments: how many recordings a draft holds. */
  TOO_MANY("StandFault.TOO_MANY"),
  /** Arguments: how many photographs wait at the most. */
  TOO_MANY_PHOTOGRAPHS("StandFault.TOO_MANY_PHOTOGRAPHS"),
  /** Several plates are remembered under one name, and none was chosen. */
  WHICH_PLATE("StandFault.WHICH_PLATE"),
  /** The clinic no longer remembers the plate. Argument: its name. */
  PLATE_GONE("StandFault.PLATE_GONE");

  private final String code;

  StandFault(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
