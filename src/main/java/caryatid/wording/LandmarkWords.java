package caryatid.wording;

import caryatid.loadline.LandmarkKind;
import caryatid.sheet.AmputationLevel;
import java.util.Locale;

/**
 * The trade's names of landmarks. A sheet names them in English; what the clinician named freely is
 * left as it is. The knee's name depends on whose knee it is: a joint of the wearer's own has a
 * centre, a prosthetic one an axis that its document names.
 */
public final class LandmarkWords {
  /** The sheet's other name of the patella's border. */
  private static final String LATERAL_PATELLAR_BORDER = "lateral patellar border";

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
    if (inSheet.equals(LATERAL_PATELLAR_BORDER)) {
      return wording.word(LandmarkKind.OUTER_PATELLAR_BORDER);
    }
    for (LandmarkKind kind : LandmarkKind.values()) {
      if (kind != LandmarkKind.OTHER && inSheet.equals(inSheet(kind))) {
        return kind == LandmarkKind.KNEE_CENTRE && prostheticKnee
            ? wording.word("LandmarkWords.PROSTHETIC_KNEE")
            : wording.word(kind);
      }
    }
    return inSheet;
  }

  private static String inSheet(LandmarkKind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
