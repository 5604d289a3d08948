package caryatid.sheet;

import caryatid.geometry.Plane;
import caryatid.loadline.Bounds;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.LimitedQuantity;
import caryatid.loadline.Target;
import caryatid.remark.Argument;
import caryatid.remark.Question;
import caryatid.remark.Topic;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Asks what can hardly be in a trial sheet, before anything was measured. */
public final class SheetQuestions {
  private final TrialSheet trial;
  private final List<Question> questions = new ArrayList<>();

  private SheetQuestions(TrialSheet trial) {
    this.trial = trial;
  }

  /** The questions, whether they are answered or not. */
  public static List<Question> of(TrialSheet trial) {
    SheetQuestions asked = new SheetQuestions(trial);
    double heelMm = trial.footwear().heelHeightMm();
    if (heelMm != 0) {
      asked.odd(SheetQuestion.ODD_HEEL, LimitedQuantity.HEEL_HEIGHT, "heel-height-mm", heelMm);
    }
    trial
        .stanceWidthMm()
        .ifPresent(
            mm ->
                asked.odd(
                    SheetQuestion.ODD_STANCE_WIDTH,
                    LimitedQuantity.STANCE_WIDTH,
                    "stance-width-mm",
                    mm));
    trial.targets().forEach(asked::target);
    return List.copyOf(asked.questions);
  }

  private void odd(Topic topic, LimitedQuantity limited, String key, double mm) {
    Bounds bounds = trial.limits().of(limited);
    if (bounds.isOdd(mm)) {
      questions.add(
          Question.of(
              topic,
              key + " " + YamlWords.number(mm),
              Argument.of(mm, Unit.MM),
              Argument.of(bounds.askBelow(), Unit.MM),
              Argument.of(bounds.askAbove(), Unit.MM)));
    }
  }

  private void target(Target target) {
    LandmarkKind kind =
        trial.landmarks().stream()
            .filter(l -> l.is(target.landmark(), target.side()))
            .map(LandmarkEntry::kind)
            .findFirst()
            .orElse(LandmarkKind.OTHER);
    Bounds bounds =
        trial.limits().of(LimitedQuantity.of(target.plane(), kind, trial.level().prostheticKnee()));
    if (bounds.isOdd(target.recommendedMm())) {
      questions.add(
          Question.of(
              SheetQuestion.ODD_TARGET,
              answer(target),
              Argument.text(target.landmark()),
              Argument.term(target.plane()),
              Argument.of(target.recommendedMm(), Unit.MM),
              Argument.of(bounds.askBelow(), Unit.MM),
              Argument.of(bounds.askAbove(), Unit.MM)));
    }
  }

  private static String answer(Target target) {
    String where = target.plane() == Plane.SAGITTAL ? "sagittal" : "frontal";
    String side = target.side().lastPart().toLowerCase(Locale.ROOT);
    return "target "
        + target.landmark()
        + " "
        + side
        + " "
        + where
        + " "
        + YamlWords.number(target.recommendedMm());
  }

  /** What has to be confirmed of a trial sheet. */
  private enum SheetQuestion implements Topic {
    /** Arguments: heel height, limits. */
    ODD_HEEL("SheetQuestion.ODD_HEEL"),
    /** Arguments: stance width, limits. */
    ODD_STANCE_WIDTH("SheetQuestion.ODD_STANCE_WIDTH"),
    /** Arguments: landmark, plane, recommended offset, limits. */
    ODD_TARGET("SheetQuestion.ODD_TARGET");

    private final String code;

    SheetQuestion(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }

    @Override
    public boolean holdsForSession() {
      return true;
    }
  }
}
