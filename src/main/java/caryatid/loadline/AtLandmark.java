package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;

/** What is so at one landmark in one plane. */
public interface AtLandmark {
  /** The landmark, and the plane it is seen in. */
  LandmarkInPlane at();

  /** In which plane. */
  default Plane plane() {
    return at().plane();
  }

  /** The leg. */
  default Side side() {
    return at().side();
  }

  /** The landmark's name. */
  default String landmark() {
    return at().landmark();
  }
}
