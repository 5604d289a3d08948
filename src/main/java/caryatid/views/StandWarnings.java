package caryatid.views;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.GroupedRemark;
import caryatid.entry.Acceptance;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.RecordOpening;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.KneeSafety;
import caryatid.loadline.LoadLineRemark;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import caryatid.standing.StandRemark;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the latest stand in each footwear warns of: its remarks of weight SAFETY, and those on the
 * knee and the body mass. They stay until a later stand in that footwear no longer warns; that
 * something was accepted takes none of them away.
 *
 * @param all the warnings, stand by stand in order of time
 */
public record StandWarnings(List<Warning> all) {
  /** A knee's axis as trial sheets name it. */
  private static final String KNEE = "knee centre";

  /** Less important when the stand is judged, but relevant to anyone who relies on it later. */
  private static final Set<Topic> AS_WELL =
      Set.of(LoadLineRemark.KNEE_LOCKED, StandRemark.BODY_MASS_DIFFERS);

  /**
   * One warning.
   *
   * @param stand the entry it is from
   * @param said the warning
   * @param accepted the entries that accept something of this stand
   */
  public record Warning(Entry stand, GroupedRemark said, List<Entry> accepted) {
    public Warning {
      accepted = List.copyOf(accepted);
    }

    /** In what the wearer stood. */
    public Optional<String> footwear() {
      return stand.content(StandSummary.class).flatMap(StandSummary::footwear);
    }
  }

  public StandWarnings {
    all = List.copyOf(all);
  }

  /**
   * The warnings of a record.
   *
   * @param valid the entries that no other takes the place of, in order of time
   * @param states what was found in stands, by the number of their entry; of a stand that is
   *     missing here, its entry tells where the line ran past the knee
   */
  public static StandWarnings of(List<Entry> valid, Map<Integer, AlignmentState> states) {
    return new StandWarnings(
        latest(valid).stream()
            .flatMap(
                stand ->
                    said(stand, valid, Optional.ofNullable(states.get(stand.number())))
                        .map(said -> new Warning(stand, said, accepted(stand, valid))))
            .toList());
  }

  /** The latest stand in each footwear, in order of time. */
  public static List<Entry> latest(List<Entry> valid) {
    Map<String, Entry> latest = new LinkedHashMap<>();
    for (Entry entry : valid) {
      if (entry.kind() == EntryKind.STAND) {
        Optional<String> footwear =
            entry.content(StandSummary.class).flatMap(StandSummary::footwear);
        String shoe = footwear.map(TermOrText::fold).orElse("");
        latest.remove(shoe);
        latest.put(shoe, entry);
      }
    }
    return List.copyOf(latest.values());
  }

  /** Whether one of them says that a prosthetic knee may bend. */
  public boolean kneeMayBend() {
    return KneeSafety.mayBend(all.stream().map(warning -> warning.said().remark()).toList());
  }

  private static Stream<GroupedRemark> said(
      Entry stand, List<Entry> valid, Optional<AlignmentState> state) {
    return state.isPresent()
        ? GroupedRemark.of(state.get()).stream().filter(said -> stays(said.remark().topic()))
        : pastKnee(stand, valid).map(remark -> new GroupedRemark(remark, 0));
  }

  private static boolean stays(Topic topic) {
    return topic.isSafety() || AS_WELL.contains(topic);
  }

  private static Stream<Remark> pastKnee(Entry stand, List<Entry> valid) {
    return stand.content(StandSummary.class).stream()
        .flatMap(stood -> stood.findings().stream())
        .filter(found -> found.plane() == Plane.SAGITTAL)
        .filter(found -> TermOrText.fold(found.landmark()).equals(KNEE))
        .filter(found -> hasKnee(valid, found.side()))
        .flatMap(
            found ->
                KneeSafety.past(
                    found.side(), found.offsetMm().doubleValue(), found.expandedMm().doubleValue())
                    .stream());
  }

  /** Where the opening cannot be read, there may be one. */
  private static boolean hasKnee(List<Entry> valid, Side leg) {
    return Entry.latest(valid, RecordOpening.class)
        .map(opening -> opening.level(leg).prostheticKnee())
        .orElse(true);
  }

  private static List<Entry> accepted(Entry stand, List<Entry> valid) {
    OptionalInt number = OptionalInt.of(stand.number());
    return valid.stream()
        .filter(
            entry ->
                entry
                    .content(Acceptance.class)
                    .filter(accepted -> accepted.stand().equals(number))
                    .isPresent())
        .toList();
  }
}
