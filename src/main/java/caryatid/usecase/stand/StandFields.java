package caryatid.usecase.stand;

import java.util.List;
import java.util.Map;

/** The names of the fields in which a stand is typed, and what those with few answers may say. */
public final class StandFields {
  public static final String AT = "at";
  public static final String BODY_MASS = "body-mass";
  public static final String HANDS = "hands";
  public static final String KNEE_LOCKED = "knee-locked";
  public static final String KNEE_MODE = "knee-mode";
  public static final String WORN = "worn";
  public static final String HEEL = "heel";
  public static final String WALKED = "minutes-walked";
  public static final String STANCE = "stance";
  public static final String PLATE = "plate";
  public static final String PLATE_LEFT = "plate-left";
  public static final String PLATE_RIGHT = "plate-right";
  public static final String OTHER_FOOT = "other-foot";
  public static final String OTHER_HIGHER = "other-foot-by";
  public static final String OTHER_SENSE = "other-foot-sense";
  public static final String CHANGED = "last-change";
  public static final String COMFORT = "comfort";
  public static final String SKIN = "skin";
  public static final String CONCLUSION = "conclusion";
  public static final String REASON = "reason";
  public static final String NEXT = "next-step";
  public static final String ROLE = "role";

  /** What was asked and is so, answer by answer. */
  public static final String MEANT = "as-meant";

  /** Rows of landmarks and of targets. */
  public static final String LANDMARK = "landmark";

  public static final String TARGET = "target";

  /** The plate description that is used, by the name under which the clinic remembers it. */
  public static final String KNOWN_PLATE = "known-plate";

  /** The folder that is watched for new exports. */
  public static final String WATCHED = "watched-folder";

  /** The stretch of a recording that is used, where somebody set it by hand, s. */
  public static final String FROM_S = "from-s";

  public static final String TO_S = "to-s";

  /** As sheets write them. */
  public static final String FOOT_ON_PLATE = "prosthetic foot on plate";

  public static final String PLATE_PER_FOOT = "one plate per foot";
  public static final String BOTH_ON_ONE = "both feet on one plate";
  public static final String IN_FRONT = "front";
  public static final String BEHIND = "behind";
  public static final String RIGHT_OF = "right";
  public static final String LEFT_OF = "left";
  public static final String HIGHER = "higher";
  public static final String LOWER = "lower";

  /** Senses in which a target's offset is negative. */
  static final List<String> NEGATIVE = List.of("posterior", "medial");

  /** Senses of the frontal plane. */
  static final List<String> FRONTAL = List.of("lateral", "medial");

  /** Standard uncertainty of marking where none is typed, mm (common practice, no source). */
  static final String MARKING_MM = "3";

  /** Landmarks that a sheet knows by name. */
  public static final List<String> KNOWN_LANDMARKS =
      List.of(
          "knee centre",
          "ankle axis",
          "foot reference point",
          "hip",
          "socket reference point",
          "lateral patellar border",
          "outer patellar border");

  static final int MOST_ROWS = 20;

  private StandFields() {}

  /**
   * The name of a field of one recording.
   *
   * @param number of the recording in its draft
   */
  public static String ofRecording(String field, int number) {
    return field + "[" + number + "]";
  }

  /** Whether a field sets the stretch of a recording. */
  public static boolean isOfStretch(String field) {
    return field.startsWith(FROM_S + "[") || field.startsWith(TO_S + "[");
  }

  /** Fields of a row that are filled in before anybody types. */
  private static boolean isPreset(String name) {
    return name.endsWith(".name")
        || name.endsWith("sense")
        || name.endsWith("-from")
        || name.endsWith(".plane")
        || name.endsWith(".landmark")
        || name.endsWith(".side")
        || name.endsWith(".marking")
        || name.endsWith(".meant-for");
  }

  /** Whether anything but what was filled in before was typed into a row. */
  public static boolean isTyped(Map<String, String> fields, String row) {
    return fields.entrySet().stream()
        .anyMatch(
            f -> f.getKey().startsWith(row) && !f.getValue().isBlank() && !isPreset(f.getKey()));
  }
}
