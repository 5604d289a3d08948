package caryatid.remark;

/** How much a remark matters; remarks are shown in this order. */
public enum Weight {
  /** The wearer may be in danger; said first and in plain words. */
  SAFETY,
  /** Changes how far the numbers can be trusted; belongs on page one. */
  IMPORTANT,
  /** For whoever looks closer. */
  NOTE
}
