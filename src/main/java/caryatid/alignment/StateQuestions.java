package caryatid.alignment;

import caryatid.geometry.Side;
import caryatid.loadline.GeometryCheck;
import caryatid.loadline.WhichLeg;
import caryatid.recording.model.RecordingRemark;
import caryatid.remark.Argument;
import caryatid.remark.Question;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import caryatid.remark.Unit;
import caryatid.sheet.SheetQuestions;
import caryatid.sheet.TrialSheet;
import caryatid.standing.StandRemark;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** Everything about a state that can hardly be, and is asked before its result is given. */
public final class StateQuestions {
  /**
   * Least standard deviation fore and aft in 20 s that is not asked about, mm: the smallest in any
   * 20 s of 1,930 real stands on both feet is 1.23 mm (open data set of Santos and Duarte 2016,
   * PeerJ 4:e2648); a prosthetic foot makes less of the sway than a sound one (half: assumed). In a
   * shorter stretch it is smaller as the root of the length.
   */
  private static final double STILL_MM = 0.6;

  private static final double STILL_S = 20;

  private StateQuestions() {}

  /**
   * The questions, whether the sheet answers them or not.
   *
   * @param platesApartMm how far the export's zero of the right foot's plate lies to the right of
   *     the left one's, mm; empty unless both are known
   */
  public static List<Question> of(AlignmentState state, OptionalDouble platesApartMm) {
    TrialSheet trial = state.trial();
    List<Question> all = new ArrayList<>(SheetQuestions.of(trial));
    state.stands().forEach(stand -> all.addAll(of(stand, platesApartMm)));
    return naming(all);
  }

  /**
   * The question about a recording that says it is of another day than its sheet.
   *
   * @param recording its name
   * @param days that its export may mean; none where it says no date
   */
  public static Optional<Question> day(TrialSheet trial, String recording, Set<LocalDate> days) {
    LocalDate day = trial.at().toLocalDate();
    return days.isEmpty() || days.contains(day)
        ? Optional.empty()
        : Optional.of(
            Question.of(
                StateQuestion.OTHER_DAY,
                "day of " + recording,
                Argument.text(recording),
                Argument.text(
                    days.stream().map(LocalDate::toString).collect(Collectors.joining(" / "))),
                Argument.text(day.toString())));
  }

  /** Those that a sheet does not answer, each once. */
  public static List<Question> unanswered(List<Question> all, TrialSheet trial) {
    Map<String, Question> open = new LinkedHashMap<>();
    all.stream()
        .filter(question -> !trial.asMeant().contains(question.answer()))
        .forEach(question -> open.putIfAbsent(question.answer(), question));
    return List.copyOf(open.values());
  }

  private static List<Question> of(Stand stand, OptionalDouble platesApartMm) {
    TrialSheet trial = stand.trial();
    List<Side> prosthetic = trial.side().sides();
    Optional<Question> side =
        WhichLeg.side(stand.standing(), stand.landmarks(), trial.stance(), prosthetic);
    List<Question> questions = new ArrayList<>(side.stream().toList());
    questions.addAll(
        WhichLeg.plates(
            stand.standing(),
            trial.stanceWidthMm(),
            side.isEmpty(),
            platesApartMm,
            trial.limits()));
    questions.addAll(
        new GeometryCheck(
                stand.standing(),
                stand.offsets(),
                stand.landmarks(),
                trial.level().prostheticKnee(),
                trial.limits())
            .questions(prosthetic, stand.recording().name()));
    still(stand).ifPresent(questions::add);
    stand.remarks().stream()
        .filter(remark -> remark.topic() == StandRemark.BODY_MASS_DIFFERS)
        .forEach(remark -> questions.add(mass(remark, trial)));
    stand.remarks().stream()
        .filter(remark -> remark.topic() == RecordingRemark.LEFT_HANDED)
        .forEach(remark -> questions.add(leftHanded(remark)));
    return questions;
  }

  /**
   * What is asked of several recordings with one answer names them all, so that nobody says of one
   * what they saw of another.
   */
  private static List<Question> naming(List<Question> all) {
    return all.stream().map(question -> naming(question, all)).toList();
  }

  private static Question naming(Question question, List<Question> all) {
    if (!GeometryCheck.namesRecording(question)) {
      return question;
    }
    int last = question.arguments().size() - 1;
    String names =
        all.stream()
            .filter(q -> q.topic() == question.topic() && q.answer().equals(question.answer()))
            .map(q -> ((Argument.Text) q.arguments().get(last)).value())
            .distinct()
            .collect(Collectors.joining(", "));
    List<Argument> arguments = new ArrayList<>(question.arguments());
    arguments.set(last, Argument.text(names));
    return new Question(question.topic(), arguments, question.answer(), question.line());
  }

  private static Question leftHanded(Remark remark) {
    return Question.of(
        StateQuestion.LEFT_HANDED, "left-handed axes", remark.arguments().toArray(Argument[]::new));
  }

  /** A prosthetic foot's line that hardly moves fore and aft is mostly in another unit. */
  private static Optional<Question> still(Stand stand) {
    double length = Math.min(1, stand.standing().stretch().durationS() / STILL_S);
    double leastMm = STILL_MM * Math.sqrt(length);
    return stand.standing().sway().stream()
        .filter(sway -> sway.lowPassHz().isEmpty() && sway.sdAnteriorMm() < leastMm)
        .findFirst()
        .map(
            sway ->
                Question.of(
                    StateQuestion.HARDLY_ANY_SWAY,
                    "sway",
                    Argument.term(sway.of()),
                    Argument.of(sway.sdAnteriorMm(), Unit.MM),
                    Argument.of(leastMm, Unit.MM)));
  }

  private static Question mass(Remark remark, TrialSheet trial) {
    return Question.of(
        StateQuestion.BODY_MASS_DIFFERS,
        "body-mass-kg " + Math.round(trial.bodyMassKg().orElse(0)),
        remark.arguments().toArray(Argument[]::new));
  }

  /** What has to be confirmed of a sheet and what was measured together. */
  enum StateQuestion implements Topic {
    /** Arguments: mass that the plates weigh, mass that the sheet says. */
    BODY_MASS_DIFFERS("StateQuestion.BODY_MASS_DIFFERS"),
    /** Arguments: whose line, its standard deviation, the least that is not asked about. */
    HARDLY_ANY_SWAY("StateQuestion.HARDLY_ANY_SWAY"),
    /** Arguments: the axes. */
    LEFT_HANDED("StateQuestion.LEFT_HANDED"),
    /** Arguments: recording, its day, the sheet's. */
    OTHER_DAY("StateQuestion.OTHER_DAY");

    private final String code;

    StateQuestion(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }

    @Override
    public boolean holdsForSession() {
      return this == BODY_MASS_DIFFERS || this == LEFT_HANDED;
    }
  }
}
