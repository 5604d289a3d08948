package caryatid.wording;

import caryatid.advice.Advice;
import caryatid.advice.AdviceOutcome;
import caryatid.advice.AdviceRemark;
import caryatid.advice.Proposal;
import caryatid.geometry.Plane;
import caryatid.loadline.LandmarkInPlane;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.remark.Weight;
import caryatid.views.LastGood;
import caryatid.views.RecordAdvice;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What to change next, how this wearer answers, heels and own settings, as lines. */
public final class AdviceText {
  private final RecordAdvice of;
  private final Wording wording;
  private final LandmarkWords landmarks;
  private final OffsetWords offsets;
  private final List<String> lines = new ArrayList<>();

  private AdviceText(RecordAdvice of, Wording wording) {
    this.of = of;
    this.wording = wording;
    this.landmarks = new LandmarkWords(wording, of.prostheticKnee());
    this.offsets = new OffsetWords(wording);
  }

  /** All of it: the advice first, the numbers behind it last. */
  public static List<String> lines(RecordAdvice of, Wording wording) {
    List<String> lines = new ArrayList<>(advice(of, wording));
    lines.addAll(new AdviceNumbers(of, wording).lines());
    return List.copyOf(lines);
  }

  /** The advice with what is said of it, without the numbers behind it. */
  public static List<String> advice(RecordAdvice of, Wording wording) {
    AdviceText text = new AdviceText(of, wording);
    text.head();
    text.proposals();
    text.back();
    text.remarks();
    return List.copyOf(text.lines);
  }

  /** For which leg it is, as a heading. */
  public static String title(RecordAdvice of, Wording wording) {
    return wording.fill("AdviceText.title", Argument.term(of.leg()));
  }

  /**
   * What it comes to, in a sentence; with the causes where these are to be ruled out first, and
   * before it that a prosthetic knee may bend.
   */
  public static String sentence(RecordAdvice of, Wording wording) {
    AdviceText text = new AdviceText(of, wording);
    return (text.isUnsafe() ? text.warning() + " " : "") + text.outcome();
  }

  private String outcome() {
    Advice advice = of.advice();
    if (advice.outcome() == AdviceOutcome.CHANGE) {
      return first(advice.proposals().get(0));
    }
    boolean causes = advice.outcome() == AdviceOutcome.CAUSES_FIRST;
    return advice.remarks().stream()
        .filter(remark -> remark.topic().weight() != Weight.SAFETY)
        .limit(causes ? advice.remarks().size() : 1)
        .map(landmarks::say)
        .collect(Collectors.joining(" "));
  }

  /** What is said with every advice. */
  public static List<String> always(Wording wording) {
    return Stream.of(AdviceRemark.ONE_AT_A_TIME, AdviceRemark.WALKING_DECIDES)
        .map(Remark::of)
        .map(wording::say)
        .toList();
  }

  private String warning() {
    return wording.say(of.advice().remarks().get(0));
  }

  private boolean isUnsafe() {
    return of.advice().remarks().get(0).topic() == AdviceRemark.KNEE_WARNING;
  }

  private void head() {
    lines.add(
        of.stand().isPresent()
            ? wording.fill(
                "AdviceText.head",
                Argument.term(of.leg()),
                Argument.count(of.stand().get().number()))
            : wording.fill("AdviceText.head.none", Argument.term(of.leg())));
    if (isUnsafe()) {
      lines.add(warning());
    }
  }

  private void proposals() {
    Advice advice = of.advice();
    if (advice.outcome() != AdviceOutcome.CHANGE) {
      advice
          .probabilityNow()
          .ifPresent(now -> lines.add(wording.fill("AdviceText.now", percent(now))));
      return;
    }
    Proposal first = advice.proposals().get(0);
    lines.add(first(first));
    turns(first.first());
    first.afterFirst().forEach(this::expected);
    first
        .kneeBehind()
        .ifPresent(behind -> lines.add(wording.fill("AdviceText.behind", percent(behind))));
    advice.proposals().stream().skip(1).forEach(this::other);
  }

  private String first(Proposal proposal) {
    List<Argument> arguments = new ArrayList<>();
    arguments.add(Argument.text(phrase(proposal.first())));
    arguments.add(percent(proposal.probability()));
    arguments.add(percent(of.advice().probabilityNow().orElse(0.0)));
    if (proposal.changes().size() == 1) {
      return wording.fill("AdviceText.change", arguments);
    }
    arguments.add(Argument.text(phrase(proposal.changes().get(1))));
    return wording.fill("AdviceText.two", arguments);
  }

  private String phrase(Proposal.Change change) {
    return FollowedText.phrase(change, wording);
  }

  private void turns(Proposal.Change change) {
    OptionalDouble turns = change.of().turns(change.by());
    if (turns.isPresent()) {
      lines.add(
          "  "
              + wording.fill(
                  "AdviceText.turns",
                  Argument.of(turns.getAsDouble(), Unit.PLAIN),
                  Argument.text(wording.signed(change.riseMm(), Unit.MM) + " mm")));
    }
  }

  private void expected(Proposal.PredictedOffset offset) {
    LandmarkInPlane at = offset.target().at();
    lines.add(
        "  "
            + wording.fill(
                "AdviceText.expected",
                landmark(at),
                Argument.term(at.plane()),
                mm(at.plane(), offset.mm()),
                mm(at.plane(), offset.lowMm()),
                mm(at.plane(), offset.highMm())));
  }

  private void other(Proposal proposal) {
    String changes =
        proposal.changes().size() == 1
            ? phrase(proposal.first())
            : wording.fill(
                "AdviceText.and",
                Argument.text(phrase(proposal.first())),
                Argument.text(phrase(proposal.changes().get(1))));
    lines.add(
        wording.fill(
            proposal.aboutEqual() ? "AdviceText.equal" : "AdviceText.or",
            Argument.text(changes),
            percent(proposal.probability())));
  }

  private void back() {
    of.back()
        .ifPresent(
            good ->
                lines.add(
                    wording.fill(
                        "AdviceText.back",
                        Argument.count(good.stand().orElseThrow().number()),
                        Argument.text(
                            good.turns().stream()
                                .map(this::turn)
                                .collect(Collectors.joining("; "))))));
    of.backAgainst().ifPresent(remark -> lines.add(wording.say(remark)));
  }

  private String turn(LastGood.Turn turn) {
    return wording.fill(
        "AdviceText.turn",
        Argument.text(new EntryWords(wording).item(turn.is())),
        Argument.text(wording.exact(turn.is().set()) + " " + turn.is().unit().code()),
        Argument.text(wording.exact(turn.was().set()) + " " + turn.was().unit().code()));
  }

  private void remarks() {
    of.advice().remarks().stream()
        .skip(isUnsafe() ? 1 : 0)
        .forEach(remark -> lines.add(landmarks.say(remark)));
  }

  private Argument landmark(LandmarkInPlane at) {
    return Argument.text(landmarks.name(at.landmark()));
  }

  private Argument mm(Plane plane, double mm) {
    return Argument.text(offsets.distance(plane, mm));
  }

  /** Whole percent; between the ends never all or nothing. */
  static Argument percent(double probability) {
    long whole = Math.round(100 * probability);
    return Argument.text((whole < 1 ? "< 1" : whole > 99 ? "> 99" : "" + whole) + " %");
  }
}
