package caryatid.loadline;

/** Points of the body and the prosthesis that a load line is measured from. */
public enum LandmarkKind {
  /** Knee centre; with a prosthetic knee its axis, or the point its maker names. */
  KNEE_CENTRE,
  ANKLE_AXIS,
  FOOT_REFERENCE_POINT,
  /** Greater trochanter. */
  HIP,
  SOCKET_REFERENCE_POINT,
  OUTER_PATELLAR_BORDER,
  /** Named freely by the clinician. */
  OTHER
}
