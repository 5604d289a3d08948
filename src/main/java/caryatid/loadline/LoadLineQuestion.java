package caryatid.loadline;

import caryatid.remark.Topic;

/** What has to be confirmed of where a load line runs and of how the wearer stood. */
public enum LoadLineQuestion implements Topic {
  /** Arguments: landmark, plane, offset, limits. */
  ODD_OFFSET("LoadLineQuestion.ODD_OFFSET"),
  /** The line runs behind a prosthetic knee. Arguments: the same. */
  BEHIND_KNEE("LoadLineQuestion.BEHIND_KNEE"),
  /** Arguments: side, share, limits. */
  ODD_SHARE("LoadLineQuestion.ODD_SHARE"),
  /** Arguments: side. */
  SIDE_UNPROVEN("LoadLineQuestion.SIDE_UNPROVEN"),
  /** Arguments: distance that was measured, limits. */
  FEET_APART("LoadLineQuestion.FEET_APART"),
  /** Arguments: distance that was measured, distance that the sheet says. */
  FEET_OTHERWISE_APART("LoadLineQuestion.FEET_OTHERWISE_APART"),
  /** Arguments: distance that was measured, distance if the plates are exchanged. */
  PLATES_UNPROVEN("LoadLineQuestion.PLATES_UNPROVEN");

  private final String code;

  LoadLineQuestion(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public boolean holdsForSession() {
    return this == SIDE_UNPROVEN || this == PLATES_UNPROVEN;
  }
}
