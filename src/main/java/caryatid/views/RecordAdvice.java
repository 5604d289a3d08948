package caryatid.views;

import caryatid.advice.Advice;
import caryatid.advice.AdviceRemark;
import caryatid.advice.Advisor;
import caryatid.advice.AnkleRange;
import caryatid.advice.Extension;
import caryatid.advice.HeelAnswer;
import caryatid.advice.RepeatedSetting;
import caryatid.advice.Situation;
import caryatid.alignment.AlignmentState;
import caryatid.entry.BenchItem;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.OwnSetting;
import caryatid.entry.RecordOpening;
import caryatid.entry.TermOrText;
import caryatid.fitting.FittingRecord;
import caryatid.geometry.Side;
import caryatid.remark.Remark;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a record advises for one leg.
 *
 * @param leg the leg
 * @param prostheticKnee whether its knee belongs to the prosthesis
 * @param stand the newest stand; empty if there is none
 * @param advice what to change next, or why nothing is advised
 * @param heels what a heel of another height does
 * @param ankles what heels the foot or ankle can be set for, where its maker's limits are noted
 * @param attempts what repeated settings of the wearer's own show, by what was set
 * @param back the last good setting, where something is set otherwise now and the way back is not
 *     advised against
 * @param backAgainst why the way back is not advised
 * @param followed what was advised after each stand but the newest, and what was changed then
 */
public record RecordAdvice(
    Side leg,
    boolean prostheticKnee,
    Optional<Entry> stand,
    Advice advice,
    List<HeelAnswer> heels,
    List<AnkleRange> ankles,
    List<Attempts> attempts,
    Optional<LastGood> back,
    Optional<Remark> backAgainst,
    List<FollowedAdvice> followed) {

  /**
   * What attempts at one setting show.
   *
   * @param what what was set
   * @param errorsMm what was set less what was wanted, mm, in order of time
   */
  public record Attempts(String what, List<Double> errorsMm, RepeatedSetting show) {
    public Attempts {
      errorsMm = List.copyOf(errorsMm);
    }
  }

  /** Whether nothing is advised because no joint has its travel noted. */
  public boolean lacksTravel() {
    return advice.remarks().stream()
        .anyMatch(remark -> remark.topic() == AdviceRemark.NO_ADJUSTMENT);
  }

  public RecordAdvice {
    heels = List.copyOf(heels);
    ankles = List.copyOf(ankles);
    attempts = List.copyOf(attempts);
    followed = List.copyOf(followed);
  }

  /**
   * The advice for each leg with a prosthesis.
   *
   * @param states what was found in stands, by the number of their entry
   */
  public static List<RecordAdvice> of(FittingRecord record, Map<Integer, AlignmentState> states) {
    return record.opening().stream()
        .flatMap(opening -> opening.side().sides().stream())
        .map(leg -> of(record, states, leg))
        .toList();
  }

  private static RecordAdvice of(
      FittingRecord record, Map<Integer, AlignmentState> states, Side leg) {
    List<Entry> valid = record.valid();
    Situation situation = new RecordSituation(valid, states, leg).situation();
    LastGood good = LastGood.of(record, Optional.empty());
    Extension extension = situation.extension();
    boolean enough = good.turns().stream().allMatch(turn -> takenUp(turn, extension));
    boolean turned = good.stand().isPresent() && !good.turns().isEmpty();
    return new RecordAdvice(
        leg,
        Entry.latest(valid, RecordOpening.class)
            .map(opening -> opening.level(leg).prostheticKnee())
            .orElse(true),
        Entry.latest(valid, entry -> entry.kind() == EntryKind.STAND),
        Advisor.advise(situation),
        Advisor.heels(situation),
        ankles(valid, leg),
        attempts(valid),
        turned && enough ? Optional.of(good) : Optional.empty(),
        turned && !enough
            ? Optional.of(Remark.of(AdviceRemark.BACK_BELOW_CONTRACTURE))
            : Optional.empty(),
        FollowedAdvice.of(valid, states, leg, situation.states()));
  }

  private static boolean takenUp(LastGood.Turn turn, Extension extension) {
    return !turn.was().item().is(BenchItem.SOCKET_FLEXION)
        || extension.takenUpBy(turn.was().set().doubleValue());
  }

  private static List<AnkleRange> ankles(List<Entry> valid, Side leg) {
    List<AnkleRange.ShoeHeel> shoes =
        LatestShoe.all(valid).stream()
            .map(LatestShoe::said)
            .map(shoe -> new AnkleRange.ShoeHeel(shoe.shoe(), shoe.heelHeightMm().doubleValue()))
            .toList();
    return CurrentComponent.of(valid).stream()
        .map(CurrentComponent::limits)
        .filter(part -> part.side().filter(side -> side != leg).isEmpty())
        .filter(
            part -> part.heelHeightLowestMm().isPresent() || part.heelHeightHighestMm().isPresent())
        .map(
            part ->
                new AnkleRange(
                    part.name(),
                    mm(part.heelHeightLowestMm()),
                    mm(part.heelHeightHighestMm()),
                    shoes))
        .toList();
  }

  private static OptionalDouble mm(Optional<BigDecimal> stated) {
    return stated.stream().mapToDouble(BigDecimal::doubleValue).findFirst();
  }

  private static List<Attempts> attempts(List<Entry> valid) {
    Map<String, List<Double>> errors = new LinkedHashMap<>();
    Map<String, String> names = new LinkedHashMap<>();
    Entry.contents(valid, OwnSetting.class)
        .filter(own -> own.heelHeightSetMm().isPresent() && own.heelHeightWantedMm().isPresent())
        .forEach(
            own -> {
              BigDecimal error =
                  own.heelHeightSetMm().get().subtract(own.heelHeightWantedMm().get());
              String key = TermOrText.fold(own.what());
              names.putIfAbsent(key, own.what());
              errors.computeIfAbsent(key, k -> new ArrayList<>()).add(error.doubleValue());
            });
    List<Attempts> attempts = new ArrayList<>();
    errors.forEach(
        (key, all) ->
            RepeatedSetting.of(all, OwnSetting.SAME_MM.doubleValue())
                .ifPresent(show -> attempts.add(new Attempts(names.get(key), all, show))));
    return attempts;
  }
}
