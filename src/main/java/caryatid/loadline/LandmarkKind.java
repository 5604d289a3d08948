package caryatid.loadline;

import caryatid.remark.Coded;

/** Points of the body and the prosthesis that a load line is measured from. */
public enum LandmarkKind implements Coded {
  /** Knee centre; with a prosthetic knee its axis, or the point its maker names. */
  KNEE_CENTRE("LandmarkKind.KNEE_CENTRE"),
  ANKLE_AXIS("LandmarkKind.ANKLE_AXIS"),
  FOOT_REFERENCE_POINT("LandmarkKind.FOOT_REFERENCE_POINT"),
  /** Greater trochanter. */
  HIP("LandmarkKind.HIP"),
  SOCKET_REFERENCE_POINT("LandmarkKind.SOCKET_REFERENCE_POINT"),
  OUTER_PATELLAR_BORDER("LandmarkKind.OUTER_PATELLAR_BORDER"),
  /** Named freely by the clinician. */
  OTHER("LandmarkKind.OTHER");

  private final String code;

  LandmarkKind(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
