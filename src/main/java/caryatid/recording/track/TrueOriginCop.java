package caryatid.recording.track;

import caryatid.geometry.Axes;
import caryatid.geometry.Axis;
import caryatid.geometry.Direction;
import caryatid.recording.model.PlateLayout;

/**
 * Centre of pressure from forces and moments about a zero-moment origin below the surface. With p
 * the origin's position from the export's zero in the surface and k the vertical axis, along a
 * horizontal axis i: r_i = p_i + (e_ikj M_j - p_k F_i) / F_k, e the permutation symbol of a
 * right-handed frame. For k = z these are C3D's x = -(My + c Fx)/Fz + a and y = (Mx - c Fy)/Fz + b
 * with (a, b, c) = p. A change of sign of force and moment together (action or reaction) leaves r
 * as it is.
 */
final class TrueOriginCop {
  private final Axis up;
  private final PlateLayout.TrueOrigin origin;

  /**
   * @throws IllegalArgumentException if the axes are left-handed, for which moments have no meaning
   */
  TrueOriginCop(Axes axes, PlateLayout.TrueOrigin origin) {
    if (!axes.rightHanded()) {
      throw new IllegalArgumentException("moments about left-handed axes: " + axes);
    }
    this.up = axes.up().axis();
    this.origin = origin;
  }

  /** The other horizontal axis, about which the moment acts that moves the centre along one. */
  Axis momentAxis(Direction along) {
    return up.third(along.axis());
  }

  /** Whether horizontal forces count: the origin lies below the surface. */
  boolean needsHorizontalForce() {
    return origin.mm(up) != 0;
  }

  /** The centre of pressure along the export's direction that is the person's right or anterior. */
  CopFormula along(Direction along) {
    boolean follows = up == along.axis().next();
    return new CopFormula(along.sign(), origin.mm(along.axis()), follows ? 1 : -1, origin.mm(up));
  }

  /**
   * What stays the same along a direction.
   *
   * @param sign of the export's direction
   * @param originMm where the zero-moment origin lies along the export's axis
   * @param turn +1 where the axis follows the vertical one, else -1
   * @param depthMm of the origin along the vertical axis
   */
  record CopFormula(double sign, double originMm, double turn, double depthMm) {

    /**
     * The centre of pressure at a moment, mm along the person's direction.
     *
     * @param momentNmm moment about {@link #momentAxis}, N mm
     * @param alongN force along the export's axis, N
     * @param verticalN force along the export's vertical axis, N, not 0
     */
    double at(double momentNmm, double alongN, double verticalN) {
      return sign * (originMm + (turn * momentNmm - depthMm * alongN) / verticalN);
    }
  }
}
