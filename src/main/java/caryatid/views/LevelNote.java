package caryatid.views;

import caryatid.entry.Entry;
import caryatid.entry.RecordOpening;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import caryatid.remark.Weight;
import caryatid.sheet.AmputationLevel;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Which checks apply at levels of amputation that are not the usual ones. */
enum LevelNote implements Topic {
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
    Optional<RecordOpening> opening =
        Entry.contents(valid, RecordOpening.class).reduce((earlier, later) -> later);
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
