package caryatid.recording.model;

import caryatid.remark.Coded;

/** In which horizontal directions a plate measures where the load is. */
public enum MeasuredDirections implements Coded {
  BOTH("MeasuredDirections.BOTH"),
  /** Nothing is known of the centre of pressure sideways. */
  FORE_AND_AFT("MeasuredDirections.FORE_AND_AFT");

  private final String code;

  MeasuredDirections(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  public boolean sideways() {
    return this == BOTH;
  }

  /** How many there are: 2 or 1. */
  public int count() {
    return sideways() ? 2 : 1;
  }
}
