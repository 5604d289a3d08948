package caryatid.report.pages;

import caryatid.entry.Opening;
import caryatid.views.RecordView;
import caryatid.wording.LandmarkWords;
import caryatid.wording.Wording;

/** The names of landmarks in a record, by the level of amputation that its opening states. */
final class RecordLandmarks {
  private RecordLandmarks() {}

  static LandmarkWords of(RecordView view, Wording wording) {
    boolean prostheticKnee =
        view.valid().stream()
            .map(entry -> entry.content())
            .filter(Opening.class::isInstance)
            .map(Opening.class::cast)
            .anyMatch(opening -> opening.level().prostheticKnee());
    return new LandmarkWords(wording, prostheticKnee);
  }
}
