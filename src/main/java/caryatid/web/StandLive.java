package caryatid.web;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Question;
import caryatid.remark.StoreFailure;
import caryatid.usecase.stand.DraftedStand;
import caryatid.usecase.stand.DraftedStand.SoFar;
import caryatid.usecase.stand.StandDraft;
import caryatid.usecase.stand.StandDraft.Arrived;
import caryatid.usecase.stand.StandFields;
import caryatid.usecase.stand.WatchedFolder;
import caryatid.web.page.EntryMarkup;
import caryatid.web.page.Markup;
import caryatid.web.page.ResultMarkup;
import caryatid.web.page.UploadMarkup;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What follows what is typed and what arrives: the stands and the result so far. */
final class StandLive {
  private static final double SECONDS_A_MINUTE = 60;

  /** After so much standing in a day the wearer is to sit: common practice, no source. */
  static final double SIT_AFTER_S = 5 * SECONDS_A_MINUTE;

  private final OpenRecord record;
  private final StandDraft draft;
  private final DraftedStand work;
  private final Optional<WatchedFolder> watched;
  private final Wording wording;
  private final String base;
  private double stoodS;
  private OptionalInt toCount = OptionalInt.empty();
  private final Markup step = new Markup();
  private final Markup out = new Markup();

  /**
   * @param stoodS how long the wearer stood today in the stands that are kept, s
   */
  StandLive(
      OpenRecord record,
      StandDraft draft,
      DraftedStand work,
      Optional<WatchedFolder> watched,
      double stoodS) {
    this.stoodS = stoodS;
    this.record = record;
    this.watched = watched;
    this.draft = draft;
    this.work = work;
    this.wording = record.wording();
    this.base = record.base();
  }

  Markup of(SoFar found) throws BadInput, StoreFailure {
    List<Arrived> arrived = draft.arrived();
    out.open("section", "class", "stands").element("h2", "2 " + wording.word("Web.stands"));
    int number = 1;
    for (Arrived stand : arrived) {
      stand(stand, number++);
    }
    drop();
    out.close("section").open("section", "class", "result", "aria-live", "polite");
    long counted = arrived.stream().filter(Arrived::counted).count();
    SheetFaults faults = new SheetFaults(found, draft.fields(), work, wording);
    result(found, faults, (int) counted);
    out.close("section");
    atFields(faults);
    step(arrived, found, (int) counted);
    return out;
  }

  private void stand(Arrived stand, int number) throws StoreFailure {
    out.open("div", "class", stand.counted() ? "arrived counted" : "arrived");
    String mark = stand.counted() ? " \u2713" : " \u00b7 " + wording.word("Web.notCounted");
    out.element("p", number + " \u00b7 " + stand.file().name() + mark);
    StandOverTime overTime = new StandOverTime(stand, work, draft.fields(), wording);
    out.add(overTime.markup());
    if (stand.counted()) {
      stoodS += overTime.seconds();
      action("uncount-" + stand.number(), wording.word("Web.uncount"), "");
    } else {
      if (overTime.isReadable()) {
        toCount = toCount.isPresent() ? toCount : OptionalInt.of(number);
        action("count-" + stand.number(), wording.word("Web.count"), "strong");
      }
      action("remove-" + stand.number(), wording.word("Web.remove"), "");
    }
    out.close("div");
  }

  private void action(String value, String words, String look) {
    out.element(
        "button", words, "name", "action", "value", value, look.isEmpty() ? "" : "class", look);
  }

  private void drop() {
    Optional<String> folder = watched.map(in -> in.folder().toString());
    out.add(new UploadMarkup(wording).recordings(folder));
    out.open("p", "class", "clock", "data-interrupted", wording.word("Web.clockInterrupted"));
    out.open("button", "type", "button", "data-clock", "20");
    out.text(wording.word("Web.still")).close("button").open("output").close("output");
    out.element("span", wording.word("Web.ofTwenty")).close("p");
    out.element("p", wording.word("Web.between"), "class", "note");
    stoodToday();
    out.open("p", "class", "actions");
    out.element("a", wording.word("Web.change.title"), "class", "button", "href", base + "/change");
    out.element("a", wording.word("Web.lastGood"), "class", "button", "href", base + "/back");
    out.close("p");
  }

  /** How long the wearer stood today, and from when on that it is time to sit. */
  private void stoodToday() {
    Argument minutes = Argument.count(Math.round(stoodS / SECONDS_A_MINUTE));
    out.open("p", "class", "stood").text(wording.fill("Web.stood", minutes));
    if (stoodS >= SIT_AFTER_S) {
      out.text(" ").element("strong", wording.word("Web.sit"));
    }
    out.close("p");
  }

  private void result(SoFar found, SheetFaults faults, int counted) throws StoreFailure {
    out.element(
        "h2",
        "3 "
            + (counted == 0 ? wording.word("Web.result") : ResultMarkup.heading(counted, wording)));
    if (counted == 0) {
      out.element("p", wording.word("Web.noStand"));
      return;
    }
    beforeChange();
    if (found.checked().isPresent()) {
      var checked = found.checked().get();
      if (!found.before().isEmpty()) {
        Argument answers = Argument.text(String.join("; ", found.before()));
        out.element("p", wording.fill("Web.answeredBefore", answers), "class", "note");
      }
      out.add(ResultMarkup.sentences(checked.result(), wording));
      out.open("p", "class", "actions");
      action("keep", keep(counted, wording), "strong next");
      out.close("p");
      out.add(
          ResultMarkup.drawings(checked.result(), DraftedStand.strips(checked, wording), wording));
    } else {
      refused(found, faults);
    }
    discard();
  }

  private void discard() {
    out.open("p", "class", "actions");
    out.element(
        "button",
        wording.word("Web.discard"),
        "name",
        "action",
        "value",
        "discard",
        "data-ask",
        wording.word("Web.discardAsk"));
    out.close("p");
  }

  private void beforeChange() throws StoreFailure {
    Optional<Integer> change = LastState.changeSince(record, draft.fields());
    if (change.isPresent()) {
      String words = wording.fill("Web.change.before", Argument.count(change.get()));
      out.element("p", words + " " + wording.word("Web.change.keepOrDiscard"), "class", "danger");
    }
  }

  /** What is wrong, or asked: an answer goes into the sheet that is kept. */
  private void refused(SoFar found, SheetFaults faults) {
    boolean asked = !found.questions().isEmpty();
    out.element("p", wording.word(asked ? "Web.asked" : "Web.noResult"), "class", "verdict");
    out.open("ul", "class", "open");
    for (int i = 0; i < found.problems().size(); i++) {
      out.open("li").element("span", faults.led(i));
      if (asked) {
        Question question = found.questions().get(i);
        action("meant=" + question.answer(), wording.word("Web.isSo"), "");
      }
      out.close("li");
    }
    out.close("ul");
    if (faults.looksLikeName()) {
      confirm();
    }
  }

  private void confirm() {
    String name = EntryMarkup.SURE;
    out.open("div", "class", "field check");
    out.open("input", "type", "checkbox", "id", name, "name", name, "value", "yes");
    out.element("label", wording.word("Web.sure"), "for", name).close("div");
  }

  /**
   * The one clear next step, for the foot of the page, once what follows is written: to count the
   * stand that arrived, or to keep the state that was found; empty where it is another one.
   */
  Markup step() {
    return new Markup().add(step);
  }

  private void step(List<Arrived> arrived, SoFar found, int counted) {
    if (toCount.isPresent()) {
      String words = wording.fill("Web.countStand", Argument.count(toCount.getAsInt()));
      step(step, "count-" + arrived.get(toCount.getAsInt() - 1).number(), words);
    } else if (found.checked().isPresent()) {
      step(step, "keep", keep(counted, wording));
    }
    out.open("div", "id", "step-now", "hidden", "").add(step).close("div");
  }

  private static void step(Markup out, String value, String words) {
    out.element(
        "button",
        words + " \u2192",
        "form",
        "stand",
        "name",
        "action",
        "value",
        value,
        "class",
        "strong");
  }

  private static String keep(int stands, Wording wording) {
    return stands == 1
        ? wording.word("Web.keepOne")
        : wording.fill("Web.keepState", Argument.count(stands));
  }

  /** What is wrong at the fields beside, for the script, which puts it there. */
  private void atFields(SheetFaults faults) {
    out.open("div", "id", "faults-now", "hidden", "");
    faults
        .all()
        .atFields()
        .forEach(
            (name, said) -> {
              if (!StandFields.isOfStretch(name)) {
                out.element("p", String.join(" ", said), "data-at", name);
              }
            });
    out.close("div");
  }
}
