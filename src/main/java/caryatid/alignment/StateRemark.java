package caryatid.alignment;

import caryatid.remark.Topic;
import caryatid.remark.Weight;

/** Remarks on an alignment state. */
public enum StateRemark implements Topic {
  SHARES_DIFFER("StateRemark.SHARES_DIFFER", Weight.IMPORTANT),
  SIMPLE_RULE("StateRemark.SIMPLE_RULE", Weight.IMPORTANT),
  OTHER_CONFIDENCE("StateRemark.OTHER_CONFIDENCE", Weight.IMPORTANT),
  STANDS_DISAGREE("StateRemark.STANDS_DISAGREE", Weight.IMPORTANT),
  /** Arguments: plane, landmark, side, the wearer's own standard deviation, the usual one. */
  FIVE_STANDS("StateRemark.FIVE_STANDS", Weight.IMPORTANT),
  /**
   * With what would help most. Arguments: plane, landmark, side, half-widths, remedy, width then.
   */
  TOLERANCE_TOO_NARROW("StateRemark.TOLERANCE_TOO_NARROW", Weight.IMPORTANT),
  /** The same without it. Arguments: plane, landmark, side, half-widths. */
  TOLERANCE_UNDECIDABLE("StateRemark.TOLERANCE_UNDECIDABLE", Weight.IMPORTANT),
  /** Arguments: what is beyond a maker's limit, as the sheet has it. */
  BEYOND_LIMIT("StateRemark.BEYOND_LIMIT", Weight.SAFETY),
  /** Arguments: the answers, as the sheet has them. */
  AS_MEANT("StateRemark.AS_MEANT", Weight.IMPORTANT),
  /** One of several stands. Arguments: its number, its recording, from, to. */
  STRETCH_BY_HAND("StateRemark.STRETCH_BY_HAND", Weight.NOTE),
  ONE_STAND("StateRemark.ONE_STAND", Weight.NOTE),
  LANDMARKS_SHARED("StateRemark.LANDMARKS_SHARED", Weight.NOTE),
  SMALLEST_DIFFERENCE("StateRemark.SMALLEST_DIFFERENCE", Weight.NOTE);

  private final String code;
  private final Weight weight;

  StateRemark(String code, Weight weight) {
    this.code = code;
    this.weight = weight;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public Weight weight() {
    return weight;
  }
}
