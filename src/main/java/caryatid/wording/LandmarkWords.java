package caryatid.wording;

import caryatid.alignment.GroupedRemark;
import caryatid.entry.RecordOpening;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.TrialSheet;
import caryatid.views.CurrentComponent;
import caryatid.views.RecordView;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The trade's names of landmarks. A sheet names them in English; what the clinician named freely is
 * left as it is. The knee's name depends on whose knee it is: a joint of the wearer's own has a
 * centre, a prosthetic one an axis that its document names. An ankle axis is called so only where
 * the sheet or the record says that the ankle has one; elsewhere it is the foot's reference point.
 */
public final class LandmarkWords {
  private static final String KNEE = "LandmarkKind.KNEE_CENTRE";
  private static final String ANKLE = "LandmarkKind.ANKLE_AXIS";
  private static final String FOOT = "LandmarkKind.FOOT_REFERENCE_POINT";
  private static final String PATELLA = "LandmarkKind.OUTER_PATELLAR_BORDER";

  /** The key of each name that a sheet may use. */
  private static final Map<String, String> KEYS =
      Map.of(
          "knee centre", KNEE,
          "ankle axis", ANKLE,
          "foot reference point", FOOT,
          "hip", "LandmarkKind.HIP",
          "socket reference point", "LandmarkKind.SOCKET_REFERENCE_POINT",
          "lateral patellar border", PATELLA,
          "outer patellar border", PATELLA);

  private final Wording wording;
  private final boolean prostheticKnee;
  private final Set<Side> withoutAnkleAxis;

  private LandmarkWords(Wording wording, boolean prostheticKnee, Set<Side> withoutAnkleAxis) {
    this.wording = wording;
    this.prostheticKnee = prostheticKnee;
    this.withoutAnkleAxis = Set.copyOf(withoutAnkleAxis);
  }

  /**
   * Names to choose from, before anybody said what the ankle is like.
   *
   * @param prostheticKnee whether the knee belongs to the prosthesis
   */
  public LandmarkWords(Wording wording, boolean prostheticKnee) {
    this(wording, prostheticKnee, Set.of());
  }

  /** Names for the prosthesis of a stand. */
  public LandmarkWords(Wording wording, TrialSheet trial) {
    this(
        wording,
        trial.level().prostheticKnee(),
        without(trial.side().sides(), trial::hasAnkleAxis));
  }

  /** The leg, after what is said of it; empty if the sheet is about one leg alone. */
  public static String leg(TrialSheet trial, Side leg, Wording wording) {
    return trial.side().sides().size() > 1 ? ", " + wording.word(leg) : "";
  }

  /** Names for the prosthesis of a record, by the level that its opening states. */
  public static LandmarkWords of(RecordView view, Wording wording) {
    List<Side> stated =
        openings(view).flatMap(opening -> opening.side().sides().stream()).distinct().toList();
    List<Side> legs = stated.isEmpty() ? List.of(Side.values()) : stated;
    return new LandmarkWords(
        wording,
        openings(view)
            .anyMatch(
                opening -> opening.levels().stream().anyMatch(AmputationLevel::prostheticKnee)),
        without(legs, leg -> hasAnkleAxis(view, leg)));
  }

  /** Names for a leg of a record, by the level that its opening states for that leg. */
  public static LandmarkWords of(RecordView view, Side leg, Wording wording) {
    return new LandmarkWords(
        wording,
        openings(view).anyMatch(opening -> opening.level(leg).prostheticKnee()),
        without(List.of(leg), each -> hasAnkleAxis(view, each)));
  }

  private static Stream<RecordOpening> openings(RecordView view) {
    return view.valid().stream().flatMap(entry -> entry.content(RecordOpening.class).stream());
  }

  private static boolean hasAnkleAxis(RecordView view, Side leg) {
    return openings(view).anyMatch(opening -> opening.level(leg) == AmputationLevel.PARTIAL_FOOT)
        || CurrentComponent.statedAnkleAxis(view.valid(), leg).orElse(false)
        || isMarked(view, "ankle axis", leg) && isMarked(view, "foot reference point", leg);
  }

  private static boolean isMarked(RecordView view, String landmark, Side leg) {
    return view.offsets().stream()
        .anyMatch(series -> series.landmark().equals(landmark) && series.side() == leg);
  }

  private static Set<Side> without(List<Side> legs, Predicate<Side> hasAnkleAxis) {
    return legs.stream().filter(hasAnkleAxis.negate()).collect(Collectors.toSet());
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

  /** That a point is not called as the sheet calls it, and what the sheet leaves open. */
  public static Optional<String> open(TrialSheet trial, Wording wording) {
    return trial.leavesAnkleAxisOpen()
        ? Optional.of(wording.word("LandmarkWords.ANKLE_AXIS_OPEN"))
        : Optional.empty();
  }

  /** A landmark's name, from the one in the sheet, where its leg is not known. */
  public String name(String inSheet) {
    return name(inSheet, withoutAnkleAxis.isEmpty());
  }

  /** The name of a landmark of a leg, from the one in the sheet. */
  public String name(String inSheet, Side leg) {
    return name(inSheet, !withoutAnkleAxis.contains(leg));
  }

  private String name(String inSheet, boolean ankleAxis) {
    String key = KEYS.getOrDefault(inSheet, "");
    if (key.isEmpty()) {
      return inSheet;
    }
    if (key.equals(ANKLE) && !ankleAxis) {
      return wording.word(FOOT);
    }
    return wording.word(key.equals(KNEE) && prostheticKnee ? "LandmarkWords.PROSTHETIC_KNEE" : key);
  }
}
