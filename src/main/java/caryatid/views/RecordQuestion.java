package caryatid.views;

import caryatid.remark.Topic;

/** What has to be confirmed of a stand that does not go with its record. */
enum RecordQuestion implements Topic {
  /** Arguments: what the record has, what the sheet says. */
  OTHER_COMPONENT("RecordQuestion.OTHER_COMPONENT"),
  /** Arguments: landmark, plane, recommended then, entry, recommended now. */
  TARGET_REVERSED("RecordQuestion.TARGET_REVERSED"),
  /** Arguments: landmark, plane, source then, entry, source now. */
  TARGET_FROM_ELSEWHERE("RecordQuestion.TARGET_FROM_ELSEWHERE"),
  /** Arguments: landmark, plane, source, entry of the components. */
  TARGET_OF_OLD_COMPONENT("RecordQuestion.TARGET_OF_OLD_COMPONENT"),
  /** Arguments: recording, entry. */
  SAME_RECORDING("RecordQuestion.SAME_RECORDING"),
  /** Arguments: component, leg, body mass, highest. */
  MASS_ABOVE_LIMIT("RecordQuestion.MASS_ABOVE_LIMIT"),
  /** Arguments: component, leg, heel height, lowest, highest. */
  HEEL_BEYOND_LIMITS("RecordQuestion.HEEL_BEYOND_LIMITS"),
  /** The wearer's own setting. Arguments: the same. */
  OWN_SETTING_BEYOND_LIMITS("RecordQuestion.OWN_SETTING_BEYOND_LIMITS"),
  /** Arguments: heel of the footwear, heel height that the ankle was set for, entry. */
  ANKLE_FOR_OTHER_HEEL("RecordQuestion.ANKLE_FOR_OTHER_HEEL"),
  /** Arguments: footwear, its heel, entry of the shoe, its heel there. */
  HEEL_OF_SHOE("RecordQuestion.HEEL_OF_SHOE"),
  /** Arguments: time, entry. */
  SAME_TIME("RecordQuestion.SAME_TIME"),
  /** Arguments: mass now, mass then. */
  OTHER_MASS("RecordQuestion.OTHER_MASS"),
  /** Arguments: landmark, height, entry, heel then, heel now. */
  OLD_HEIGHT("RecordQuestion.OLD_HEIGHT"),
  /** Arguments: landmark, plane, offset then, entry, offset now. */
  OFFSET_JUMPS("RecordQuestion.OFFSET_JUMPS");

  private final String code;

  RecordQuestion(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public boolean holdsForSession() {
    return switch (this) {
      case OTHER_COMPONENT,
          OTHER_MASS,
          MASS_ABOVE_LIMIT,
          HEEL_BEYOND_LIMITS,
          OWN_SETTING_BEYOND_LIMITS ->
          true;
      default -> false;
    };
  }
}
