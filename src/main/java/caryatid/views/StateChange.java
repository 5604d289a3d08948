package caryatid.views;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.OffsetChange;
import caryatid.entry.Entry;
import caryatid.loadline.LandmarkInPlane;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the offsets that are compared with a target changed from one measured state of a record to
 * the next.
 *
 * @param before number of the earlier stand's entry
 * @param after number of the later stand's entry
 * @param offsets at least one
 */
public record StateChange(int before, int after, List<OffsetChange> offsets) {

  /** How a change is judged, at 95 %. */
  public enum Judgement {
    /** Chance does not explain it. */
    REAL,
    /** Chance does not explain it if the marks stayed and the feet stood in their outlines. */
    REAL_IF_STAYED,
    /** Chance may explain it. */
    CHANCE;

    /** How one of them is judged. */
    public static Judgement of(OffsetChange change) {
      if (OffsetChange.isReal(change.anew())) {
        return REAL;
      }
      return OffsetChange.isReal(change.stayed()) ? REAL_IF_STAYED : CHANCE;
    }
  }

  public StateChange {
    offsets = List.copyOf(offsets);
  }

  /**
   * The changes from each measured state to the next that was measured alike: on the same plate and
   * feet.
   *
   * @param valid a record's entries, in the order in which what they say was so
   * @param states what was found in stands, by the number of their entry, as far as it can be read
   */
  public static List<StateChange> of(List<Entry> valid, Map<Integer, AlignmentState> states) {
    List<StateChange> changes = new ArrayList<>();
    Optional<Integer> before = Optional.empty();
    for (Entry entry : valid) {
      if (states.containsKey(entry.number())) {
        before.flatMap(then -> between(then, entry.number(), states)).ifPresent(changes::add);
        before = Optional.of(entry.number());
      }
    }
    return List.copyOf(changes);
  }

  private static Optional<StateChange> between(
      int then, int now, Map<Integer, AlignmentState> states) {
    AlignmentState earlier = states.get(then);
    AlignmentState later = states.get(now);
    List<OffsetChange> offsets =
        earlier.isMeasuredAs(later)
            ? OffsetChange.between(earlier, later).stream()
                .filter(change -> isJudged(change, later))
                .toList()
            : List.of();
    return offsets.isEmpty() ? Optional.empty() : Optional.of(new StateChange(then, now, offsets));
  }

  private static boolean isJudged(OffsetChange change, AlignmentState state) {
    return state.findings().stream()
        .map(finding -> finding.offset())
        .anyMatch(offset -> offset.at().equals(change.at()) && offset.of() == change.of());
  }

  /** The change of a series' offset, however its landmark is written, if it is among them. */
  public Optional<OffsetChange> of(OffsetSeries series) {
    LandmarkInPlane at = OffsetSeries.key(series.at());
    return offsets.stream().filter(change -> OffsetSeries.key(change.at()).equals(at)).findFirst();
  }
}
