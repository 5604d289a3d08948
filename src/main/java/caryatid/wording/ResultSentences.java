package caryatid.wording;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.GroupedRemark;
import caryatid.alignment.PrecisionHint;
import caryatid.alignment.Result;
import caryatid.alignment.StateOffset;
import caryatid.alignment.StateRemark;
import caryatid.alignment.Undecided;
import caryatid.loadline.Finding;
import caryatid.loadline.KneeSafety;
import caryatid.remark.Argument;
import caryatid.remark.Topic;
import caryatid.remark.Unit;
import caryatid.standing.StandRemark;
import caryatid.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A result in as few sentences as it takes: what is unsafe first, then one for each finding. */
public final class ResultSentences {
  private static final Set<Topic> SET_BY_HAND =
      Set.of(StandRemark.SET_BY_HAND, StateRemark.STRETCH_BY_HAND);

  private final Wording wording;
  private final LandmarkWords landmarks;
  private final OffsetWords offsets;

  private ResultSentences(Wording wording, LandmarkWords landmarks) {
    this.wording = wording;
    this.landmarks = landmarks;
    this.offsets = new OffsetWords(wording);
  }

  /**
   * One finding.
   *
   * @param result whether the tolerance is met, its mark in front
   * @param sentence where the load line runs, and what is recommended
   * @param undecided that it is undecided, and what would decide it; empty if it is decided
   * @param help what would make it surer most, if it is undecided and nobody is at risk
   */
  public record InWords(
      String result, String sentence, Optional<String> undecided, Optional<String> help) {}

  /** What is unsafe, in words; empty where nothing is. */
  public static List<String> unsafe(Result result, Wording wording) {
    AlignmentState state = result.state();
    LandmarkWords landmarks = new LandmarkWords(wording, state.trial());
    return GroupedRemark.of(state).stream()
        .filter(said -> said.remark().topic().isSafety())
        .map(landmarks::say)
        .toList();
  }

  /** What would help most if the measurement cannot decide a tolerance; empty if it can. */
  public static List<String> help(Result result, Wording wording) {
    AlignmentState state = result.state();
    LandmarkWords landmarks = new LandmarkWords(wording, state.trial());
    return GroupedRemark.of(state).stream()
        .filter(said -> said.remark().topic() == StateRemark.TOLERANCE_TOO_NARROW)
        .map(landmarks::say)
        .toList();
  }

  /** Of which stands the part that is used was set by hand. */
  public static List<String> setByHand(Result result, Wording wording) {
    return GroupedRemark.of(result.state()).stream()
        .filter(said -> SET_BY_HAND.contains(said.remark().topic()))
        .map(wording::say)
        .toList();
  }

  /** The findings, in their order. */
  public static List<InWords> findings(Result result, Wording wording) {
    AlignmentState state = result.state();
    ResultSentences sentences =
        new ResultSentences(wording, new LandmarkWords(wording, state.trial()));
    List<InWords> said = new ArrayList<>();
    boolean safe = !KneeSafety.mayBend(state.remarks());
    for (Finding finding : state.findings()) {
      Optional<Undecided> undecided = Undecided.of(state, finding);
      Optional<PrecisionHint> hint =
          state
              .offset(finding)
              .flatMap(StateOffset::hint)
              .filter(known -> safe && helps(known, undecided));
      said.add(sentences.said(finding, undecided, hint));
    }
    return said;
  }

  private static String undecided(Undecided by) {
    return switch (by) {
      case STANDS -> "Web.undecided.stands";
      case MARKS -> "Web.undecided.marks";
      case NEITHER -> "Web.undecided.neither";
    };
  }

  /** More stands are not called a help where they will not decide. */
  private static boolean helps(PrecisionHint hint, Optional<Undecided> undecided) {
    return undecided
        .filter(by -> by == Undecided.STANDS || hint.remedy() != PrecisionHint.Remedy.REPEAT)
        .isPresent();
  }

  /** What does not decide alone is not called a help. */
  private String help(PrecisionHint hint, Optional<Undecided> undecided) {
    boolean neither = undecided.equals(Optional.of(Undecided.NEITHER));
    return wording.fill(
        neither ? "ResultSentences.NARROWS" : "ResultSentences.HELP",
        Argument.text(wording.word("Findings.REMEDY." + hint.remedy().lastPart())),
        Argument.of(hint.halfWidthMm(), Unit.MM),
        Argument.of(hint.halfWidthThenMm(), Unit.MM));
  }

  private InWords said(
      Finding finding, Optional<Undecided> undecided, Optional<PrecisionHint> hint) {
    double mm = finding.offset().mm().value();
    double expandedMm = finding.offset().mm().expanded(Estimate.COVERAGE);
    var plane = finding.offset().plane();
    String sentence =
        wording.fill(
            "ResultSentences.FINDING",
            Argument.text(landmarks.name(finding.offset().landmark(), finding.offset().side())),
            Argument.text(offsets.rounded(plane, mm)),
            Argument.text(span(finding, mm - expandedMm, mm + expandedMm)),
            Argument.text(offsets.rounded(plane, finding.target().recommendedMm())),
            Argument.text(
                span(finding, finding.target().lowestMm(), finding.target().highestMm())));
    return new InWords(
        new ResultWords(wording).inFull(finding),
        sentence,
        undecided.map(by -> wording.word(undecided(by))),
        hint.map(known -> help(known, undecided)));
  }

  /** A range by its two ends: with their directions where these differ. */
  private String span(Finding finding, double lowMm, double highMm) {
    long low = Math.round(lowMm);
    long high = Math.round(highMm);
    boolean across = low < 0 && high > 0;
    String from =
        across ? offsets.rounded(finding.offset().plane(), lowMm) : whole(low, high, true);
    String to =
        across ? offsets.rounded(finding.offset().plane(), highMm) : whole(low, high, false);
    return wording.fill("ResultSentences.SPAN", Argument.text(from), Argument.text(to));
  }

  private static String whole(long low, long high, boolean first) {
    long near = Math.min(Math.abs(low), Math.abs(high));
    long far = Math.max(Math.abs(low), Math.abs(high));
    return first ? Long.toString(near) : far + "\u00a0" + Unit.MM.symbol();
  }
}
