package caryatid.views;

import caryatid.alignment.AlignmentState;
import caryatid.entry.Entry;
import caryatid.entry.RecordOpening;
import caryatid.entry.StandSummary;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.loadline.LandmarkInPlane;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import caryatid.remark.Weight;
import caryatid.sheet.AmputationLevel;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A record as it is shown and reported: the timeline, how each offset went from stand to stand, and
 * what is outside a maker's limit.
 *
 * @param code the record's code
 * @param headDigest SHA-512 that changes if any byte of any entry changes, hexadecimal
 * @param newest number of the newest entry that the digest vouches for
 * @param timeline all undamaged entries, in order of their times
 * @param valid those of them that no other takes the place of, in the order in which what they say
 *     was so
 * @param offsets one series for each plane, side and landmark, in the order they first occur
 * @param changes what was changed from stand to stand
 * @param open what is left open
 * @param remarks which entries cannot be read, and what is outside a limit that a maker states
 * @param warnings what the latest stand in each footwear warns of
 * @param damage what is damaged
 * @param unread why undamaged entries cannot be read
 */
public record RecordView(
    RecordCode code,
    String headDigest,
    int newest,
    List<TimelineRow> timeline,
    List<Entry> valid,
    List<OffsetSeries> offsets,
    List<StandChange> changes,
    List<Remark> open,
    List<Remark> remarks,
    StandWarnings warnings,
    List<Problem> damage,
    List<Problem> unread) {

  /**
   * A line of the timeline.
   *
   * @param entry the entry
   * @param correctedBy number of the entry that takes its place
   */
  public record TimelineRow(Entry entry, Optional<Integer> correctedBy) {}

  public RecordView {
    timeline = List.copyOf(timeline);
    valid = List.copyOf(valid);
    offsets = List.copyOf(offsets);
    changes = List.copyOf(changes);
    open = List.copyOf(open);
    remarks = List.copyOf(remarks);
    damage = List.copyOf(damage);
    unread = List.copyOf(unread);
  }

  /** The view of a record. */
  public static RecordView of(FittingRecord record) {
    List<TimelineRow> timeline =
        record.entries().stream()
            .sorted(
                Comparator.comparing((Entry e) -> e.at().toInstant())
                    .thenComparingInt(Entry::number))
            .map(e -> new TimelineRow(e, record.correctionOf(e).map(Entry::number)))
            .toList();
    List<Entry> valid = record.valid();
    List<OffsetSeries> offsets = series(record);
    return new RecordView(
        record.code(),
        record.headDigest(),
        record.size(),
        timeline,
        valid,
        offsets,
        StandChange.of(record),
        Stream.of(OpenIssueFinder.of(valid, offsets), DuplicateRecordings.of(record))
            .flatMap(List::stream)
            .toList(),
        Stream.of(LostEntryRemark.of(record), MakersLimits.check(valid), LevelNote.of(valid))
            .flatMap(List::stream)
            .toList(),
        StandWarnings.of(valid, Map.of()),
        record.damage(),
        record.unread().stream().flatMap(u -> u.problems().stream()).toList());
  }

  /** Whether something was set otherwise after the last stand. */
  public boolean isChangedSinceStand() {
    return open.stream().anyMatch(remark -> remark.topic() == OpenIssue.CHANGED_SINCE);
  }

  /** What is damaged, and what cannot be read. */
  public List<Problem> notShown() {
    return Stream.concat(damage.stream(), unread.stream()).toList();
  }

  /** The same view with other damage. */
  public RecordView withDamage(List<Problem> found) {
    return with(remarks, warnings, found);
  }

  /**
   * The same view with the warnings of the stands' results; without them, their entries tell as
   * much as they can.
   *
   * @param states what was found in stands, by the number of their entry
   */
  public RecordView withResults(Map<Integer, AlignmentState> states) {
    return with(remarks, StandWarnings.of(valid, states), damage);
  }

  /** The same view with more remarks. */
  public RecordView withRemarks(List<Remark> more) {
    return with(Stream.concat(remarks.stream(), more.stream()).toList(), warnings, damage);
  }

  private RecordView with(List<Remark> remarks, StandWarnings warnings, List<Problem> damage) {
    return new RecordView(
        code,
        headDigest,
        newest,
        timeline,
        valid,
        offsets,
        changes,
        open,
        remarks,
        warnings,
        damage,
        unread);
  }

  private static List<OffsetSeries> series(FittingRecord record) {
    Map<LandmarkInPlane, OffsetSeries> all = new LinkedHashMap<>();
    for (Entry entry : record.valid()) {
      entry.content(StandSummary.class).stream()
          .flatMap(stood -> stood.findings().stream())
          .forEach(
              found -> {
                OffsetSeries one =
                    new OffsetSeries(
                        found.at(),
                        List.of(OffsetSeries.measured(entry, record.timeOf(entry), found)));
                all.merge(OffsetSeries.key(found.at()), one, OffsetSeries::with);
              });
    }
    return List.copyOf(all.values());
  }

  /** Which checks apply at levels of amputation that are not the usual ones. */
  private enum LevelNote implements Topic {
    PARTIAL_FOOT("LevelNote.PARTIAL_FOOT"),
    KNEE_DISARTICULATION("LevelNote.KNEE_DISARTICULATION"),
    HIP_DISARTICULATION("LevelNote.HIP_DISARTICULATION"),
    ROTATIONPLASTY("LevelNote.ROTATIONPLASTY");

    private final String code;

    LevelNote(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }

    @Override
    public Weight weight() {
      return Weight.NOTE;
    }

    /** What is to be known of the levels of a record. */
    static List<Remark> of(List<Entry> valid) {
      Optional<RecordOpening> opening = Entry.latest(valid, RecordOpening.class);
      return opening.stream()
          .flatMap(o -> o.levels().stream())
          .flatMap(LevelNote::of)
          .map(note -> Remark.of(note))
          .toList();
    }

    private static Stream<LevelNote> of(AmputationLevel level) {
      return switch (level) {
        case PARTIAL_FOOT -> Stream.of(PARTIAL_FOOT);
        case KNEE_DISARTICULATION -> Stream.of(KNEE_DISARTICULATION);
        case HIP_DISARTICULATION -> Stream.of(HIP_DISARTICULATION);
        case ROTATIONPLASTY -> Stream.of(ROTATIONPLASTY);
        case ANKLE_DISARTICULATION, TRANSTIBIAL, TRANSFEMORAL -> Stream.empty();
      };
    }
  }
}
