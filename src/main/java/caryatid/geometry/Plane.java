package caryatid.geometry;

import caryatid.remark.Coded;

/** The two planes in which a load line is judged (ISO 8549-1). */
public enum Plane implements Coded {
  /** Seen from the side: offsets are positive when the load line is anterior. */
  SAGITTAL("Plane.SAGITTAL"),
  /** Seen from the front: offsets are positive when the load line is lateral on its own side. */
  FRONTAL("Plane.FRONTAL");

  private final String code;

  Plane(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
