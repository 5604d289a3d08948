package caryatid.report;

import caryatid.entry.EntryKind;
import caryatid.fitting.RecordView;
import caryatid.sheet.AmputationLevel;
import caryatid.wording.LandmarkWords;
import caryatid.wording.Wording;
import java.util.Locale;
import java.util.stream.Stream;

/** The names of landmarks in a record, by the level of amputation that its opening states. */
final class RecordLandmarks {
  private RecordLandmarks() {}

  static LandmarkWords of(RecordView view, Wording wording) {
    boolean prostheticKnee =
        view.valid().stream()
            .filter(entry -> entry.kind() == EntryKind.OPENING)
            .flatMap(entry -> entry.content().words("level").stream())
            .anyMatch(RecordLandmarks::isWithKnee);
    return new LandmarkWords(wording, prostheticKnee);
  }

  private static boolean isWithKnee(String level) {
    return Stream.of(AmputationLevel.values())
        .filter(AmputationLevel::prostheticKnee)
        .anyMatch(l -> l.name().toLowerCase(Locale.ROOT).replace('_', ' ').equals(level));
  }
}
