package caryatid.alignment;

import caryatid.remark.Topic;

/** What has to be confirmed of a sheet and what was measured together. */
enum StateQuestion implements Topic {
  /** Arguments: mass that the plates weigh, mass that the sheet says. */
  BODY_MASS_DIFFERS("StateQuestion.BODY_MASS_DIFFERS"),
  /** Arguments: whose line, its standard deviation, the least that is not asked about. */
  HARDLY_ANY_SWAY("StateQuestion.HARDLY_ANY_SWAY"),
  /** Arguments: recording, its day, the sheet's. */
  OTHER_DAY("StateQuestion.OTHER_DAY");

  private final String code;

  StateQuestion(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public boolean holdsForSession() {
    return this == BODY_MASS_DIFFERS;
  }
}
