package caryatid.sheet;

/** What the wearer's hands did during the stand. */
public enum Hands {
  FREE,
  /** Touching the rail without leaning on it. */
  TOUCHING,
  HOLDING
}
