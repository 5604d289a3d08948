package caryatid.web;

import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.usecase.stand.DraftedStand;
import caryatid.usecase.stand.DrawnOverTime;
import caryatid.usecase.stand.StandDraft.Arrived;
import caryatid.usecase.stand.StandFields;
import caryatid.web.page.FieldFaults;
import caryatid.web.page.Markup;
import caryatid.web.page.StretchMarkup;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A recording that arrived: drawn over time, or why not, and the stretch of it that is used. */
final class StandOverTime {
  private final Arrived stand;
  private final Map<String, String> typed;
  private final Wording wording;
  private final Map<String, List<String>> atFields = new LinkedHashMap<>();
  private final Markup drawn = new Markup();
  private double seconds;
  private boolean readable;

  /**
   * @param typed what was typed, by field
   */
  StandOverTime(Arrived stand, DraftedStand work, Map<String, String> typed, Wording wording)
      throws StoreFailure {
    this.stand = stand;
    this.typed = typed;
    this.wording = wording;
    try {
      List<DrawnOverTime> drawings = work.overTime(stand, wording);
      seconds = drawings.get(0).seconds();
      drawings.forEach(drawing -> drawn.add(StretchMarkup.of(drawing, stand.number(), wording)));
      readable = true;
    } catch (BadInput e) {
      refused(e.problems());
    }
  }

  private void refused(List<Problem> problems) {
    List<String> others = new ArrayList<>();
    for (Problem problem : problems) {
      String said = SheetFaults.bare(problem, wording);
      String place = problem.place().file();
      if (StandFields.isOfStretch(place)) {
        atFields.put(place, List.of(said));
      } else {
        others.add(said);
      }
    }
    if (!others.isEmpty()) {
      drawn.open("div", "class", "fault");
      others.forEach(said -> drawn.element("p", said));
      drawn.close("div");
    }
  }

  /** Whether it can be used as it is. */
  boolean isReadable() {
    return readable;
  }

  /** How long it is, s; 0 where it cannot be used. */
  double seconds() {
    return seconds;
  }

  /** Folded once it is counted, unless something is wrong with it. */
  Markup markup() {
    Markup fields =
        StretchMarkup.fields(
            stand.number(),
            stand.file().name(),
            typed,
            new FieldFaults(atFields, List.of()),
            wording);
    if (!stand.counted()) {
      return new Markup().add(drawn).add(fields);
    }
    Markup out = new Markup();
    String told = StretchMarkup.told(stand.number(), typed, wording);
    String number = Integer.toString(stand.number());
    out.open("details", "data-stand", number, readable ? "" : "open", "");
    out.element(
        "summary", wording.word("Web.overTime") + (told.isEmpty() ? "" : " \u00b7 " + told));
    return out.add(drawn).add(fields).close("details");
  }
}
