package caryatid.sheet;

/**
 * The shoe on the prosthetic foot.
 *
 * @param description in the clinician's words; {@code barefoot} where nothing was worn
 * @param heelHeightMm effective heel height: heel thickness less forefoot sole thickness, mm
 */
public record Footwear(String description, double heelHeightMm) {
  /**
   * Heels whose heights differ by more are two; landmarks rise with the heel by about as much, mm
   * (common practice, no source).
   */
  public static final double OTHER_HEEL_MM = 5;

  /**
   * @throws IllegalArgumentException if the height is not finite
   */
  public Footwear {
    if (!Double.isFinite(heelHeightMm)) {
      throw new IllegalArgumentException("heel height: " + heelHeightMm);
    }
  }
}
