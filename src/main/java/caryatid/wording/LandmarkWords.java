package caryatid.wording;

import caryatid.sheet.AmputationLevel;
import java.util.Map;

/**
 * The trade's names of landmarks. A sheet names them in English; what the clinician named freely is
 * left as it is. The knee's name depends on whose knee it is: a joint of the wearer's own has a
 * centre, a prosthetic one an axis that its document names.
 */
public final class LandmarkWords {
  private static final String KNEE = "LandmarkKind.KNEE_CENTRE";
  private static final String PATELLA = "LandmarkKind.OUTER_PATELLAR_BORDER";

  /** The key of each name that a sheet may use. */
  private static final Map<String, String> KEYS =
      Map.of(
          "knee centre", KNEE,
          "ankle axis", "LandmarkKind.ANKLE_AXIS",
          "foot reference point", "LandmarkKind.FOOT_REFERENCE_POINT",
          "hip", "LandmarkKind.HIP",
          "socket reference point", "LandmarkKind.SOCKET_REFERENCE_POINT",
          "lateral patellar border", PATELLA,
          "outer patellar border", PATELLA);

  private final Wording wording;
  private final boolean prostheticKnee;

  /**
   * @param prostheticKnee whether the knee belongs to the prosthesis
   */
  public LandmarkWords(Wording wording, boolean prostheticKnee) {
    this.wording = wording;
    this.prostheticKnee = prostheticKnee;
  }

  /** Names for a prosthesis of a level. */
  public LandmarkWords(Wording wording, AmputationLevel level) {
    this(wording, level.prostheticKnee());
  }

  /** A landmark's name, from the one in the sheet. */
  public String name(String inSheet) {
    String key = KEYS.getOrDefault(inSheet, "");
    if (key.isEmpty()) {
      return inSheet;
    }
    return wording.word(key.equals(KNEE) && prostheticKnee ? "LandmarkWords.PROSTHETIC_KNEE" : key);
  }
}
