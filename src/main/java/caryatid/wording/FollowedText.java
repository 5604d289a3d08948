package caryatid.wording;

import caryatid.advice.Adjustment;
import caryatid.advice.ChangeKind;
import caryatid.advice.Learnt;
import caryatid.advice.Proposal;
import caryatid.geometry.Plane;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.views.FollowedAdvice;
import caryatid.views.RecordAdvice;
import java.util.Optional;
import java.util.stream.Collectors;

/** What was advised, what was changed then, what was expected of it and what was measured. */
public final class FollowedText {
  private final RecordAdvice of;
  private final Wording wording;
  private final LandmarkWords landmarks;
  private final OffsetWords offsets;

  public FollowedText(RecordAdvice of, Wording wording) {
    this.of = of;
    this.wording = wording;
    this.landmarks = new LandmarkWords(wording, of.prostheticKnee());
    this.offsets = new OffsetWords(wording);
  }

  /** What was advised before a stand, and what was made of it; empty for the first one. */
  public Optional<String> of(int stand) {
    return of.followed().stream()
        .filter(followed -> followed.stand() == stand)
        .map(this::say)
        .findFirst();
  }

  private String say(FollowedAdvice followed) {
    return wording.fill(
        "FollowedText." + followed.how(),
        Argument.count(followed.before()),
        Argument.text(followed.advised().map(this::advised).orElse("")),
        Argument.count(followed.stand()),
        Argument.text(made(followed)));
  }

  private String advised(Proposal proposal) {
    return phrase(proposal.first(), wording);
  }

  /** A change in words: {@code plantarflex the foot by 2.0°, to 5.0°}. */
  static String phrase(Proposal.Change change, Wording wording) {
    Adjustment of = change.of();
    Unit unit = of.kind().unit();
    return wording.fill(
        of.kind().code() + (change.by() > 0 ? ".more" : ".less"),
        Argument.of(Math.abs(change.by()), unit),
        Argument.of(change.to(), unit));
  }

  private String made(FollowedAdvice followed) {
    String made =
        followed.inOrder().entrySet().stream()
            .map(each -> made(each.getKey(), each.getValue()))
            .collect(Collectors.joining("; "));
    return made.isEmpty() ? "–" : made;
  }

  private String made(ChangeKind kind, double by) {
    return wording.word(kind)
        + ": "
        + wording.signed(by, kind.unit())
        + (kind.unit() == Unit.DEG ? "" : "\u00a0")
        + kind.unit().symbol();
  }

  /** What was expected of an offset, and what was measured. */
  public String predicted(Learnt.Predicted one) {
    Plane plane = one.at().plane();
    return wording.fill(
        "AdviceText.predicted",
        Argument.count(one.state()),
        Argument.text(landmarks.name(one.at().landmark())),
        Argument.term(plane),
        mm(plane, one.mm()),
        mm(plane, one.lowMm()),
        mm(plane, one.highMm()),
        mm(plane, one.measuredMm()));
  }

  private Argument mm(Plane plane, double mm) {
    return Argument.text(offsets.distance(plane, mm));
  }
}
