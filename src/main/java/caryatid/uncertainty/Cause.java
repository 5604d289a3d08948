package caryatid.uncertainty;

/** Kinds of sources of uncertainty, as they are named to people. */
public enum Cause {
  SWAY,
  PLATE_ACCURACY,
  MARKING,
  REGISTRATION,
  LANDMARK_MOVEMENT,
  YAW,
  LEVEL,
  REPEATABILITY,
  BODY_MASS
}
