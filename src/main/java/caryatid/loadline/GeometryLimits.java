package caryatid.loadline;

import java.util.Map;

/**
 * The one table of what can hardly be and what cannot be.
 *
 * @param own the clinician's own limits, in place of the usual ones
 */
public record GeometryLimits(Map<LimitedQuantity, Bounds> own) {
  /** The usual limits of every quantity. */
  public static final GeometryLimits USUAL = new GeometryLimits(Map.of());

  public GeometryLimits {
    own = Map.copyOf(own);
  }

  /** The limits of a quantity. */
  public Bounds of(LimitedQuantity quantity) {
    return own.getOrDefault(quantity, quantity.usual());
  }
}
