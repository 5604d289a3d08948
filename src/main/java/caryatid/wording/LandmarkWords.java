package caryatid.wording;

import caryatid.alignment.GroupedRemark;
import caryatid.entry.RecordOpening;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.sheet.AmputationLevel;
import caryatid.views.RecordView;
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

  /** Names for the prosthesis of a record, by the level that its opening states. */
  public static LandmarkWords of(RecordView view, Wording wording) {
    return new LandmarkWords(
        wording,
        view.valid().stream()
            .flatMap(entry -> entry.content(RecordOpening.class).stream())
            .anyMatch(
                opening -> opening.levels().stream().anyMatch(AmputationLevel::prostheticKnee)));
  }

  /** Names for a leg of a record, by the level that its opening states for that leg. */
  public static LandmarkWords of(RecordView view, Side leg, Wording wording) {
    return new LandmarkWords(
        wording,
        view.valid().stream()
            .flatMap(entry -> entry.content(RecordOpening.class).stream())
            .anyMatch(opening -> opening.level(leg).prostheticKnee()));
  }

  /** A remark's sentence, the landmarks in it by the trade's names. */
  public String say(Remark remark) {
    return wording.say(named(remark));
  }

  /** The same of a remark on a state, with the number of stands it holds for. */
  public String say(GroupedRemark said) {
    return wording.say(new GroupedRemark(named(said.remark()), said.stands()));
  }

  private Remark named(Remark remark) {
    return new Remark(remark.topic(), remark.arguments().stream().map(this::named).toList());
  }

  private Argument named(Argument argument) {
    return argument instanceof Argument.Text text ? Argument.text(name(text.value())) : argument;
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
