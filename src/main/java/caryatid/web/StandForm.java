package caryatid.web;

import caryatid.entry.EntryKind;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.stand.ChosenPlate;
import caryatid.usecase.stand.DraftedStand;
import caryatid.usecase.stand.DraftedStand.SoFar;
import caryatid.usecase.stand.StandDraft;
import caryatid.usecase.stand.StandFields;
import caryatid.web.page.EntryMarkup;
import caryatid.web.page.JobStep;
import caryatid.web.page.LegDrawing;
import caryatid.web.page.LocalTimes;
import caryatid.web.page.Markup;
import caryatid.web.page.ReadyMarkup;
import caryatid.web.page.SheetMarkup;
import caryatid.web.page.SheetMarkup.StandFormValues;
import caryatid.web.page.StateMarkup;
import caryatid.web.page.TypedForm;
import caryatid.web.page.TypedTime;
import caryatid.wording.Wording;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The form around a drafted stand: its sheet on the left, stands and result beside it. */
final class StandForm {
  private final OpenRecord record;
  private final DraftedStand work;
  private final StandDraft draft;
  private final ChosenPlate plate;
  private final WindowState state;
  private final Wording wording;

  StandForm(
      OpenRecord record,
      DraftedStand work,
      StandDraft draft,
      ChosenPlate plate,
      WindowState state) {
    this.record = record;
    this.work = work;
    this.draft = draft;
    this.plate = plate;
    this.state = state;
    this.wording = record.wording();
  }

  /** The form with what was found so far. */
  Markup page(SoFar found, Markup live) throws BadInput, StoreFailure {
    Map<String, String> earlier = work.earlier();
    Map<String, String> typed = typed(earlier);
    StandFormValues values =
        new StandFormValues(
            typed,
            earlier,
            new SheetFaults(found, typed, work, wording).all(),
            plate,
            work.isOfBothSides(),
            work.hasProstheticKnee());
    Markup out = begin();
    out.open("section", "class", "sheet").element("h2", "1 " + wording.word("Web.landmarks"));
    sheet(out, values);
    when(out, values);
    by(out, typed);
    out.close("section").open("div", "id", "live", "class", "live").add(live).close("div");
    working(out);
    return out.close("form");
  }

  /** What the script is waiting for, once that takes longer. */
  private void working(Markup out) {
    out.open(
        "p",
        "class",
        "busy working",
        "id",
        "working",
        "role",
        "status",
        "hidden",
        "",
        "data-sending",
        wording.word("Web.sending"),
        "data-reading",
        wording.word("Web.readingAll"),
        "data-stale",
        wording.word("Web.stale"));
    out.open("span").close("span");
    out.element("button", wording.word("Web.cancel"), "type", "button").close("p");
  }

  /** The first button is the one that Enter presses where the script does not run. */
  private Markup begin() {
    Markup out = new Markup();
    out.open(
        "form",
        "method",
        "post",
        "action",
        record.address(JobStep.STATIC),
        "id",
        "stand",
        "class",
        "stand",
        "autocomplete",
        "off",
        "data-saved",
        wording.word("Web.draftSaved"));
    out.open("input", "type", "hidden", "name", EntryMarkup.HEAD, "value", record.head().digest());
    out.open("button", "name", "action", "value", "type", "class", "hidden", "tabindex", "-1");
    return out.text(wording.word("Web.refresh")).close("button");
  }

  private void sheet(Markup out, StandFormValues values) {
    Map<String, String> typed = values.typed();
    out.add(SheetMarkup.change(wording, values));
    out.add(ReadyMarkup.of(typed, isFirstOfDay(), values.knee(), wording));
    boolean worn = typed.containsKey(StandFields.WORN);
    folded(out, "ready", worn(typed), worn, SheetMarkup.stance(wording, values));
    out.open("div", "id", "leg", "class", "leg");
    out.drawing(LegDrawing.svg(typed, values.knee(), wording)).close("div");
    out.add(SheetMarkup.landmarks(wording, values));
    boolean targets = StandFields.isTyped(typed, StandFields.TARGET);
    folded(out, "targets", "", targets, StateMarkup.targets(wording, values));
    folded(out, "notes", "", true, StateMarkup.notes(wording, values));
  }

  private boolean isFirstOfDay() {
    LocalDate today = state.records().now().toLocalDate();
    return record.view().valid().stream()
        .noneMatch(
            entry -> entry.kind() == EntryKind.STAND && entry.at().toLocalDate().equals(today));
  }

  /** What was typed; before anything was, what stays from the stand before: all but the marks. */
  private Map<String, String> typed(Map<String, String> earlier) throws StoreFailure {
    Map<String, String> typed = new LinkedHashMap<>(draft.fields());
    if (typed.keySet().stream().noneMatch(name -> name.equals(StandFields.WORN))) {
      earlier.forEach(
          (name, value) -> {
            if (!isMark(name)) {
              typed.putIfAbsent(name, value);
            }
          });
      work.bodyMassKg().ifPresent(kg -> typed.putIfAbsent(StandFields.BODY_MASS, kg));
      typed.putIfAbsent(StandFields.OTHER_HIGHER, "0");
      feet(typed);
    }
    return typed;
  }

  /** With two plates, one is under each foot, the left one under the left foot. */
  private void feet(Map<String, String> typed) {
    if (plate.plates().size() == 2) {
      typed.putIfAbsent(StandFields.STANCE, StandFields.PLATE_PER_FOOT);
      typed.putIfAbsent(StandFields.PLATE_LEFT, plate.plates().get(0));
      typed.putIfAbsent(StandFields.PLATE_RIGHT, plate.plates().get(1));
    }
  }

  private static boolean isMark(String name) {
    return name.startsWith(StandFields.LANDMARK + "[")
        && (name.endsWith(".forward") || name.endsWith(".rightward") || name.endsWith(".up"));
  }

  /** What is folded is told in short, so that nobody overlooks what stays from state to state. */
  private static String worn(Map<String, String> typed) {
    return Stream.of(StandFields.WORN, StandFields.HEEL)
        .filter(typed::containsKey)
        .map(typed::get)
        .collect(Collectors.joining(", ", ": ", " mm"));
  }

  private void folded(Markup out, String what, String told, boolean filled, Markup fields) {
    out.open("details", filled ? "" : "open", "", "class", "fold");
    out.element("summary", wording.word("Web." + what) + (filled ? told : ""))
        .add(fields)
        .close("details");
  }

  private void by(Markup out, Map<String, String> typed) {
    out.open("div", "class", "field");
    String by = typed.getOrDefault(EntryMarkup.BY, state.initials());
    EntryMarkup.initials(out, wording, by, false);
    out.close("div");
  }

  /** When the wearer stood: now, until a stand is counted or another time is typed. */
  private void when(Markup out, StandFormValues values) {
    String at = values.typed().getOrDefault(StandFields.AT, "");
    LocalTimes times = LocalTimes.here(wording);
    String said = times.read(at).map(times::show).orElse(at);
    TypedForm typed = new TypedForm(at.isEmpty() ? Map.of() : Map.of(TypedTime.AT, said));
    TypedTime.TimeField shown =
        new TypedTime.TimeField(state.time(record.code()), wording.word("Web.whenStand"));
    TypedTime.field(out, shown, typed, values.faults(), wording);
  }
}
