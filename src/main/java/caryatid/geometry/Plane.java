package caryatid.geometry;

/** The two planes in which a load line is judged (ISO 8549-1). */
public enum Plane {
  /** Seen from the side: offsets are positive when the load line is anterior. */
  SAGITTAL,
  /** Seen from the front: offsets are positive when the load line is lateral on its own side. */
  FRONTAL;

  /** The other of the two. */
  public Plane other() {
    return this == SAGITTAL ? FRONTAL : SAGITTAL;
  }
}
