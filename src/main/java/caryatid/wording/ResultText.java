package caryatid.wording;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.GroupedRemark;
import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.alignment.StateOffset;
import caryatid.geometry.Side;
import caryatid.loadline.Finding;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Offset;
import caryatid.loadline.UnjudgedTarget;
import caryatid.remark.Argument;
import caryatid.remark.TimeText;
import caryatid.remark.Unit;
import caryatid.sheet.TrialSheet;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.QuietStretch;
import caryatid.standing.UnusedPart;
import caryatid.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A result as a few lines for a terminal. */
public final class ResultText {

  private final Wording wording;
  private final OffsetWords offsets;
  private final List<String> lines = new ArrayList<>();
  private LandmarkWords landmarks;

  private ResultText(Wording wording) {
    this.wording = wording;
    this.offsets = new OffsetWords(wording);
    this.landmarks = new LandmarkWords(wording, false);
  }

  /** The result's lines. */
  public static List<String> lines(Result result, Wording wording) {
    ResultText text = new ResultText(wording);
    text.state(result.state());
    text.lines.add("");
    text.lines.add(wording.word("ResultText.caution"));
    return List.copyOf(text.lines);
  }

  private void state(AlignmentState state) {
    landmarks = new LandmarkWords(wording, state.trial());
    List<GroupedRemark> said = GroupedRemark.of(state);
    said.stream().filter(ResultText::isWarning).forEach(this::remark);
    head(state.trial());
    state.stands().forEach(this::stand);
    lines.add("");
    state.findings().forEach(this::finding);
    untargeted(state).forEach(this::offset);
    state.withheld().forEach(this::withheld);
    new ResultWords(wording).undecided(state).ifPresent(lines::add);
    LandmarkWords.open(state.trial(), wording).ifPresent(lines::add);
    if (!said.isEmpty()) {
      lines.add("");
    }
    said.stream().filter(s -> !isWarning(s)).forEach(this::remark);
  }

  private void head(TrialSheet trial) {
    say(
        "ResultText.head",
        trial.wearer(),
        wording.word(trial.side()) + " " + wording.word(trial.level()),
        TimeText.of(trial.at()),
        trial.footwear().description());
  }

  private static boolean isWarning(GroupedRemark said) {
    return said.remark().topic().isSafety();
  }

  /** The vertical load lines past landmarks without a target. They are listed too. */
  private static List<Offset> untargeted(AlignmentState state) {
    List<Offset> judged = state.findings().stream().map(Finding::offset).toList();
    return state.offsets().stream()
        .map(StateOffset::offset)
        .filter(o -> o.kind() == LoadLineMethod.VERTICAL && !judged.contains(o))
        .filter(o -> o.of() != LoadLineOwner.WHOLE_BODY || isOnlyLine(state))
        .toList();
  }

  private static boolean isOnlyLine(AlignmentState state) {
    return state.offsets().stream().allMatch(o -> o.offset().of() == LoadLineOwner.WHOLE_BODY);
  }

  private void stand(Stand stand) {
    QuietStretch stretch = stand.standing().stretch();
    String used =
        wording.fill(
            "ResultText.stand",
            Argument.text(stand.recording().name()),
            Argument.of(stretch.fromS(), Unit.S),
            Argument.of(stretch.toS(), Unit.S));
    lines.add(used + leftOut(stretch));
    for (Side side : stand.trial().side().sides()) {
      var share = stand.standing().share().get(side);
      if (share != null) {
        say(
            "ResultText.share",
            wording.word(side),
            wording.number(100 * share.value(), Unit.PERCENT),
            wording.number(100 * share.expanded(Estimate.COVERAGE), Unit.PERCENT));
      }
    }
  }

  /** How much was left out, and why, the longest first; empty where everything was used. */
  private String leftOut(QuietStretch stretch) {
    Map<UnusedPart.Reason, Double> seconds = new EnumMap<>(UnusedPart.Reason.class);
    stretch.leftOut().forEach(p -> seconds.merge(p.reason(), p.toS() - p.fromS(), Double::sum));
    double leftS = seconds.values().stream().mapToDouble(Double::doubleValue).sum();
    String reasons =
        seconds.entrySet().stream()
            .sorted(Map.Entry.<UnusedPart.Reason, Double>comparingByValue().reversed())
            .map(entry -> wording.word(entry.getKey()))
            .collect(Collectors.joining(", "));
    return reasons.isEmpty()
        ? ""
        : wording.fill(
            "ResultText.left-out",
            Argument.of(leftS, Unit.S),
            Argument.of(leftS + stretch.durationS(), Unit.S),
            Argument.text(reasons));
  }

  private void finding(Finding finding) {
    say(
        "ResultText.finding",
        wording.word(finding.offset().plane()),
        landmarks.name(finding.offset().landmark(), finding.offset().side()),
        wording.word(finding.offset().of()),
        offsets.offset(finding.offset()),
        wording.signed(finding.offset().mm().value(), Unit.MM),
        offsets.uncertainty(finding.offset()),
        offsets.target(finding.target()),
        offsets.result(finding));
    ResultWords.advice(finding).ifPresent(words -> say("ResultText.advice", words));
  }

  private void withheld(UnjudgedTarget withheld) {
    say(
        "ResultText.withheld",
        wording.word(withheld.target().plane()),
        landmarks.name(withheld.target().landmark(), withheld.target().side()),
        landmarks.say(withheld.reason()));
  }

  private void offset(Offset offset) {
    say(
        "ResultText.offset",
        wording.word(offset.plane()),
        landmarks.name(offset.landmark(), offset.side()),
        wording.word(offset.of()),
        offsets.offset(offset),
        wording.signed(offset.mm().value(), Unit.MM),
        offsets.uncertainty(offset));
  }

  private void remark(GroupedRemark said) {
    say("ResultText.remark", wording.word(said.remark().topic().weight()), landmarks.say(said));
  }

  private void say(String key, String... arguments) {
    lines.add(wording.fill(key, Stream.of(arguments).map(Argument::text).toList()));
  }
}
