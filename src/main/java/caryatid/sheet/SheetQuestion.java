package caryatid.sheet;

import caryatid.remark.Topic;

/** What has to be confirmed of a trial sheet. */
enum SheetQuestion implements Topic {
  /** Arguments: heel height, limits. */
  ODD_HEEL("SheetQuestion.ODD_HEEL"),
  /** Arguments: stance width, limits. */
  ODD_STANCE_WIDTH("SheetQuestion.ODD_STANCE_WIDTH"),
  /** Arguments: landmark, plane, recommended offset, limits. */
  ODD_TARGET("SheetQuestion.ODD_TARGET");

  private final String code;

  SheetQuestion(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public boolean holdsForSession() {
    return true;
  }
}
