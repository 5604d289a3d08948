package caryatid.loadline;

import caryatid.remark.Topic;

/** What has to be confirmed of where a load line runs and of how the wearer stood. */
public enum LoadLineQuestion implements Topic {
  /** Arguments: landmark, plane, offset, limits, recordings. */
  ODD_OFFSET("LoadLineQuestion.ODD_OFFSET"),
  /** The line runs behind a prosthetic knee. Arguments: the same. */
  BEHIND_KNEE("LoadLineQuestion.BEHIND_KNEE"),
  /** Arguments: landmark, height, limits. */
  ODD_HEIGHT("LoadLineQuestion.ODD_HEIGHT"),
  /** Arguments: side, share, limits. */
  ODD_SHARE("LoadLineQuestion.ODD_SHARE"),
  /** Arguments: side. */
  SIDE_UNPROVEN("LoadLineQuestion.SIDE_UNPROVEN"),
  /** With one plate, where a patella's lateral border beside its knee proves it; the same. */
  SIDE_UNPROVEN_BY_BORDER("LoadLineQuestion.SIDE_UNPROVEN_BY_BORDER"),
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
    return switch (this) {
      case SIDE_UNPROVEN, SIDE_UNPROVEN_BY_BORDER, PLATES_UNPROVEN, ODD_HEIGHT -> true;
      default -> false;
    };
  }

  /** Whether it asks which side the prosthesis is on. */
  public boolean ofSide() {
    return this == SIDE_UNPROVEN || this == SIDE_UNPROVEN_BY_BORDER;
  }
}
