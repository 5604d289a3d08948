package caryatid.views;

import caryatid.advice.AdviceRemark;
import caryatid.advice.LegChain;
import caryatid.advice.MeasuredState;
import caryatid.advice.Situation;
import caryatid.advice.Situation.Circumstance;
import caryatid.alignment.AlignmentState;
import caryatid.alignment.StateOffset;
import caryatid.entry.Assessment;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KneeLock;
import caryatid.entry.LegLength;
import caryatid.entry.RecordOpening;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.geometry.Side;
import caryatid.loadline.KneeSafety;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.sheet.Hands;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Quantiles;
import caryatid.uncertainty.Source;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** What a record says of one leg, as an advice needs it. */
final class RecordSituation {
  /** A load share below which a cause is to be found first, % (common practice, no source). */
  private static final double LOW_SHARE = 40;

  /** Pain from which on a cause is to be found first, of 10 (common practice, no source). */
  private static final int PAIN = 4;

  private static final Pattern POLYCENTRIC =
      Pattern.compile("(?iu).*pol(?:y|i)[cz]+[eé]ntri.*", Pattern.DOTALL);

  private final List<Entry> valid;
  private final Map<Integer, AlignmentState> states;
  private final Side leg;
  private final Optional<Entry> newest;
  private final boolean prostheticKnee;

  RecordSituation(List<Entry> valid, Map<Integer, AlignmentState> states, Side leg) {
    this.valid = valid;
    this.states = states;
    this.leg = leg;
    this.newest = Entry.latest(valid, entry -> entry.kind() == EntryKind.STAND);
    this.prostheticKnee =
        Entry.latest(valid, RecordOpening.class)
            .map(opening -> opening.level(leg).prostheticKnee())
            .orElse(true);
  }

  Situation situation() {
    return new Situation(
        new LegChain(leg, prostheticKnee, landmarks()),
        measured(),
        targets(),
        ChangesOfItems.adjustments(valid, leg),
        circumstances(),
        causes(),
        ChangesOfItems.extension(valid, leg));
  }

  private Optional<AlignmentState> state() {
    return newest.flatMap(entry -> Optional.ofNullable(states.get(entry.number())));
  }

  private List<Landmark> landmarks() {
    return state().map(state -> state.stands().get(0).landmarks()).orElse(List.of());
  }

  private List<Target> targets() {
    return state()
        .map(state -> state.trial().targets())
        .orElseGet(
            () ->
                newest.flatMap(entry -> entry.content(StandSummary.class)).stream()
                    .flatMap(stood -> stood.findings().stream())
                    .map(RecordSituation::target)
                    .toList());
  }

  private static Target target(StandSummary.Found found) {
    return new Target(
        found.at(),
        found.recommendedMm().doubleValue(),
        found.belowMm().doubleValue(),
        found.aboveMm().doubleValue(),
        found.source(),
        Target.MeantFor.FOOT,
        Optional.empty(),
        Optional.empty());
  }

  /** Stands that can be learnt from: not locked, no hand, with a result. */
  private List<MeasuredState> measured() {
    List<MeasuredState> measured = new ArrayList<>();
    for (Entry entry : valid) {
      Optional<StandSummary> stood = entry.content(StandSummary.class);
      List<Offset> offsets = stood.map(s -> offsets(entry, s)).orElse(List.of());
      if (stood.isPresent() && !offsets.isEmpty() && !isLocked(entry) && !isHandHeld(entry)) {
        measured.add(
            new MeasuredState(
                entry.number(),
                plate(entry),
                footwear(Optional.of(entry)).equals(footwear(newest)),
                ChangesOfItems.settings(valid.subList(0, valid.indexOf(entry)), leg, stood),
                offsets));
      }
    }
    return measured;
  }

  private static Optional<String> footwear(Optional<Entry> stand) {
    return stand
        .flatMap(entry -> entry.content(StandSummary.class))
        .flatMap(StandSummary::footwear)
        .map(TermOrText::fold);
  }

  /** The plate is known by its description; a typed stand's by nothing. */
  private String plate(Entry entry) {
    return Optional.ofNullable(states.get(entry.number()))
        .flatMap(state -> state.stands().get(0).description())
        .map(description -> description.sha512())
        .orElse("entry " + entry.number());
  }

  private List<Offset> offsets(Entry entry, StandSummary stood) {
    Optional<AlignmentState> state = Optional.ofNullable(states.get(entry.number()));
    LoadLineOwner foot = LoadLineOwner.foot(leg);
    return state
        .map(
            s ->
                s.offsets().stream()
                    .map(StateOffset::offset)
                    .filter(o -> o.kind() == LoadLineMethod.VERTICAL && o.of() == foot)
                    .filter(o -> o.side() == leg)
                    .toList())
        .orElseGet(
            () ->
                stood.findings().stream()
                    .filter(found -> found.side() == leg)
                    .map(found -> typed(found, foot))
                    .toList());
  }

  /** What was typed has its interval, and nothing that it shares with others. */
  private static Offset typed(StandSummary.Found found, LoadLineOwner foot) {
    double sd =
        found.expandedMm().doubleValue()
            / Quantiles.t((1 + Estimate.COVERAGE) / 2, Double.POSITIVE_INFINITY);
    Contribution all =
        new Contribution(
            new Source(Cause.REPEATABILITY, found.at().toString()),
            Math.max(sd, 0.1),
            1,
            Double.POSITIVE_INFINITY);
    return new Offset(
        found.at(),
        foot,
        LoadLineMethod.VERTICAL,
        new Estimate(found.offsetMm().doubleValue(), List.of(all)));
  }

  private boolean isLocked(Entry stand) {
    boolean noted =
        stand
            .content(StandSummary.class)
            .flatMap(StandSummary::kneeMode)
            .filter(mode -> mode.is(KneeLock.LOCKED))
            .isPresent();
    return noted
        || Optional.ofNullable(states.get(stand.number()))
            .flatMap(state -> state.trial().knee())
            .filter(knee -> knee.locked())
            .isPresent();
  }

  private boolean isHandHeld(Entry stand) {
    return Optional.ofNullable(states.get(stand.number()))
        .filter(state -> state.trial().hands() != Hands.FREE)
        .isPresent();
  }

  private Set<Circumstance> circumstances() {
    Set<Circumstance> hold = EnumSet.noneOf(Circumstance.class);
    newest.ifPresent(stand -> of(stand, hold));
    if (prostheticKnee && isPolycentric() && !isAxisNamed()) {
      hold.add(Circumstance.AXIS_NOT_NAMED);
    }
    if (prostheticKnee && !isAxisNamed()) {
      hold.add(Circumstance.AXIS_ASKED);
    }
    return hold;
  }

  private void of(Entry stand, Set<Circumstance> hold) {
    Optional<StandSummary> stood = stand.content(StandSummary.class);
    put(hold, Circumstance.REFUSED, stood.filter(s -> offsets(stand, s).isEmpty()).isPresent());
    put(hold, Circumstance.LOCKED, prostheticKnee && isLocked(stand));
    put(hold, Circumstance.HAND_HELD, isHandHeld(stand));
    put(hold, Circumstance.CHANGED_SINCE, OpenIssueFinder.changedSince(valid, stand).isPresent());
    boolean bends =
        state()
            .map(state -> KneeSafety.mayBend(state.remarks()))
            .orElseGet(() -> StandWarnings.of(List.of(stand), Map.of()).kneeMayBend());
    put(hold, Circumstance.KNEE_WARNING, prostheticKnee && bends);
    put(
        hold,
        Circumstance.ONE_UNDECIDED_STAND,
        state()
            .map(RecordSituation::isOneUndecided)
            .orElseGet(
                () ->
                    stood.stream()
                        .flatMap(s -> s.findings().stream())
                        .anyMatch(found -> found.result().tooClose())));
  }

  private static boolean isOneUndecided(AlignmentState state) {
    return state.stands().size() == 1
        && state.findings().stream().anyMatch(finding -> finding.verdict().tooClose());
  }

  private static void put(Set<Circumstance> all, Circumstance one, boolean holds) {
    if (holds) {
      all.add(one);
    }
  }

  private boolean isPolycentric() {
    return CurrentComponent.of(valid).stream()
        .map(CurrentComponent::limits)
        .anyMatch(part -> POLYCENTRIC.matcher(part.what() + " " + part.name()).matches());
  }

  private boolean isAxisNamed() {
    return landmarks().stream()
        .filter(landmark -> landmark.side() == leg)
        .filter(landmark -> landmark.kind() == LandmarkKind.KNEE_CENTRE)
        .anyMatch(landmark -> landmark.definition().isPresent());
  }

  /** What is to be ruled out first. */
  private List<Remark> causes() {
    List<Remark> causes = new ArrayList<>(HeelSetting.issues(valid));
    LegDifference.of(valid).ifPresent(causes::add);
    if (Entry.latest(valid, LegLength.class).isEmpty()) {
      causes.add(Remark.of(AdviceRemark.LENGTH_NOT_NOTED));
    }
    if (Entry.latest(valid, Assessment.class).flatMap(Assessment::socketFit).isEmpty()) {
      causes.add(Remark.of(AdviceRemark.SEAT_NOT_NOTED));
    }
    WearerIssues.pain(valid, AdviceRemark.PAIN, PAIN).ifPresent(causes::add);
    newest
        .flatMap(stand -> stand.content(StandSummary.class))
        .flatMap(StandSummary::loadSharePercent)
        .filter(share -> share.doubleValue() < LOW_SHARE)
        .ifPresent(
            share ->
                causes.add(
                    Remark.of(
                        AdviceRemark.LOAD_SHARE_LOW,
                        Argument.of(share.doubleValue(), Unit.PERCENT))));
    return causes;
  }
}
