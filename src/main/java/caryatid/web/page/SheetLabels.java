package caryatid.web.page;

import caryatid.usecase.stand.StandFields;
import caryatid.wording.LandmarkWords;
import caryatid.wording.Wording;
import java.util.Map;
import java.util.Optional;

/** The fields of a stand by the keys of its sheet, and the labels they have on the page. */
public final class SheetLabels {
  /** Fields by the keys of the sheet that they are written under. */
  private static final Map<String, String> FIELDS =
      Map.ofEntries(
          Map.entry("body-mass-kg", StandFields.BODY_MASS),
          Map.entry("heel-height-mm", StandFields.HEEL),
          Map.entry("worn", StandFields.WORN),
          Map.entry("minutes-walked", StandFields.WALKED),
          Map.entry("stance", StandFields.STANCE),
          Map.entry("knee", StandFields.KNEE_MODE),
          Map.entry("mode", StandFields.KNEE_MODE),
          Map.entry("locked", StandFields.KNEE_LOCKED),
          Map.entry("on", StandFields.OTHER_FOOT),
          Map.entry("height-difference-mm", StandFields.OTHER_HIGHER),
          Map.entry("last-change", StandFields.CHANGED),
          Map.entry("at", TypedTime.AT),
          Map.entry("comfort", StandFields.COMFORT),
          Map.entry("skin", StandFields.SKIN),
          Map.entry("conclusion", StandFields.CONCLUSION),
          Map.entry("reason", StandFields.REASON),
          Map.entry("next-step", StandFields.NEXT),
          Map.entry("role", StandFields.ROLE));

  /** Fields of a row by the keys of the sheet that they are written under. */
  private static final Map<String, String> IN_ROW =
      Map.ofEntries(
          Map.entry("forward-mm", "forward"),
          Map.entry("rightward-mm", "rightward"),
          Map.entry("up-mm", "up"),
          Map.entry("marking-mm", "marking"),
          Map.entry("read-at-s", "read-at"),
          Map.entry("is", "is"),
          Map.entry("landmark", "landmark"),
          Map.entry("recommended-mm", "recommended"),
          Map.entry("below-mm", "below"),
          Map.entry("above-mm", "above"),
          Map.entry("source", "source"));

  /** The words of labels by fields, or by what fields of rows are called behind their row. */
  private static final Map<String, String> LABELS =
      Map.ofEntries(
          Map.entry(StandFields.BODY_MASS, "Web.bodyMass"),
          Map.entry(StandFields.HEEL, "Web.heelHeight"),
          Map.entry(StandFields.WORN, "Web.worn"),
          Map.entry(StandFields.WALKED, "Web.walked"),
          Map.entry(StandFields.STANCE, "Web.stance"),
          Map.entry(StandFields.KNEE_MODE, "Web.kneeMode"),
          Map.entry(StandFields.KNEE_LOCKED, "Web.kneeLocked"),
          Map.entry(StandFields.OTHER_FOOT, "Web.otherFoot"),
          Map.entry(StandFields.OTHER_HIGHER, "Web.otherFootBy"),
          Map.entry(StandFields.CHANGED, "Web.lastChange"),
          Map.entry(StandFields.COMFORT, "Web.comfort"),
          Map.entry(StandFields.SKIN, "Web.skin"),
          Map.entry(StandFields.CONCLUSION, "Web.conclusion"),
          Map.entry(StandFields.REASON, "Web.reason"),
          Map.entry(StandFields.NEXT, "Web.nextStep"),
          Map.entry(StandFields.ROLE, "Web.role"),
          Map.entry(TypedTime.AT, "Web.when"),
          Map.entry(StandFields.FROM_S, "Web.stretchFrom"),
          Map.entry(StandFields.TO_S, "Web.stretchTo"),
          Map.entry("forward", "Web.way.forward"),
          Map.entry("rightward", "Web.way.rightward"),
          Map.entry("up", "Web.up"),
          Map.entry("marking", "Web.markingMm"),
          Map.entry("read-at", "Web.readAt"),
          Map.entry("is", "Web.is"),
          Map.entry("landmark", "Web.landmark"),
          Map.entry("recommended", "Web.recommended"),
          Map.entry("below", "Web.below"),
          Map.entry("above", "Web.above"),
          Map.entry("source", "Web.source"));

  private SheetLabels() {}

  /**
   * The field that is written under a key of a sheet.
   *
   * @param row the row it is in, such as {@code landmark[2].}; empty for none
   */
  public static Optional<String> field(String key, String row) {
    boolean inRow = !row.isEmpty() && IN_ROW.containsKey(key);
    return inRow ? Optional.of(row + IN_ROW.get(key)) : Optional.ofNullable(FIELDS.get(key));
  }

  /** The label of a field, led by the name of its landmark if what was typed has one. */
  public static Optional<String> label(
      String field, Map<String, String> typed, boolean prostheticKnee, Wording wording) {
    int dot = field.indexOf("].") + 1;
    String last = dot > 0 ? field.substring(dot + 1) : field.replaceFirst("\\[\\d+]$", "");
    String row = dot > 0 ? field.substring(0, dot) : "";
    String landmark = typed.getOrDefault(row + ".name", typed.getOrDefault(row + ".landmark", ""));
    String lead =
        landmark.isEmpty() ? "" : new LandmarkWords(wording, prostheticKnee).name(landmark) + ", ";
    return Optional.ofNullable(LABELS.get(last)).map(key -> lead + wording.word(key));
  }
}
