package caryatid.advice;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LandmarkKind;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The landmarks of a prosthetic leg as a chain: foot, ankle, shank, knee, socket. What is marked is
 * known; what is not makes the kinds of change that turn about it unknown to geometry.
 *
 * @param side the leg
 * @param prostheticKnee whether the knee belongs to the prosthesis, below the socket
 * @param landmarks those of the leg, in the person's frame
 */
public record LegChain(Side side, boolean prostheticKnee, List<Landmark> landmarks) {
  /** A knee's centre or axis as trial sheets name it, and people who type what was found. */
  private static final String KNEE = "knee centre";

  public LegChain {
    landmarks = landmarks.stream().filter(each -> each.side() == side).toList();
  }

  /** The landmark of a name. */
  Optional<Landmark> landmark(String name) {
    return landmarks.stream().filter(each -> each.name().equals(name)).findFirst();
  }

  /** The first landmark of a kind. */
  Optional<Landmark> first(LandmarkKind kind) {
    return landmarks.stream().filter(each -> each.kind() == kind).findFirst();
  }

  /** What the foot turns about: the ankle, or the foot's reference point where that is marked. */
  Optional<Landmark> ankle() {
    return first(LandmarkKind.ANKLE_AXIS).or(() -> first(LandmarkKind.FOOT_REFERENCE_POINT));
  }

  /** Whether a landmark in a plane is the centre or axis of the knee, seen from the side. */
  boolean isKneeFromTheSide(LandmarkInPlane at) {
    boolean knee =
        landmark(at.landmark())
            .map(marked -> marked.kind() == LandmarkKind.KNEE_CENTRE)
            .orElseGet(() -> at.landmark().strip().toLowerCase(Locale.ROOT).equals(KNEE));
    return knee && at.plane() == Plane.SAGITTAL;
  }

  /** Where a landmark was marked: lateral, anterior and up, mm; 0 where a plane was not marked. */
  double[] place(Landmark landmark) {
    return new double[] {
      side.lateral() * coordinate(landmark, Plane.FRONTAL).orElse(0),
      coordinate(landmark, Plane.SAGITTAL).orElse(0),
      landmark.heightMm()
    };
  }

  private static OptionalDouble coordinate(Landmark landmark, Plane plane) {
    return landmark.in(plane).stream().mapToDouble(c -> c.mm()).findFirst();
  }
}
