package caryatid.web;

import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.AddedEntry;
import caryatid.usecase.Check.Checked;
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
import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import caryatid.web.page.ResultMarkup;
import caryatid.web.page.TypedForm;
import caryatid.web.page.TypedTime;
import caryatid.web.page.UploadMarkup;
import caryatid.wording.RecordText;
import caryatid.wording.Wording;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Static alignment: landmarks, stands and result, side by side, until the state is kept. */
final class StaticPage {
  private static final Pattern ACTION = Pattern.compile("(count|uncount|remove)-(\\d{1,2})");
  private static final String ACT = "action";

  /** The time as somebody typed it, so that it is forgotten when it is typed no longer. */
  private static final String AT_TYPED = "at-typed";

  private static final Set<String> NOT_TYPED =
      Set.of(
          UploadMarkup.PATH,
          ACT,
          "part",
          EntryMarkup.HEAD,
          TypedTime.AT,
          TypedTime.SHOWN,
          StandFields.AT);

  private final WindowState state;
  private final StandWatch watch;

  StaticPage(WindowState state) {
    this.state = state;
    this.watch = new StandWatch(state);
  }

  /** The page, or, when something was sent, what became of it. */
  Reply answer(Request request, OpenRecord record) throws BadInput, StoreFailure {
    StandDraft draft = state.draft(record.code());
    if (request.part(3).equals("recording") && request.changes()) {
      draft.take(request.field("name").orElse(""), request.body());
      return Reply.part(new Markup());
    }
    if (!request.changes()) {
      // Without the script, loading the page again is how what arrived is taken.
      watch.look(record.code(), draft);
      return page(200, record, draft, false);
    }
    boolean part = request.field("part").isPresent();
    if (part && isOfAnotherHead(request, record)) {
      return Reply.part(outdated(record, draft));
    }
    if (!isPoll(request)) {
      type(request, draft, record.wording());
    }
    if (part) {
      watch.look(record.code(), draft);
      change(request, draft);
      DraftedStand work = work(record, draft);
      Markup live = live(record, draft, work).of(work.shown(isSure(request)));
      String leg = LegDrawing.svg(draft.fields(), work.hasProstheticKnee(), record.wording());
      return Reply.part(live.open("div", "id", "leg-now", "hidden", "").drawing(leg).close("div"));
    }
    return act(request, record, draft);
  }

  /** Asked by the page alone while a folder is watched: nobody typed anything. */
  private static boolean isPoll(Request request) {
    return request.field("part").equals(Optional.of("poll"));
  }

  private static boolean isOfAnotherHead(Request request, OpenRecord record) {
    return request
        .field(EntryMarkup.HEAD)
        .filter(head -> !head.equals(record.head().digest()))
        .isPresent();
  }

  /** What a page of a record that has changed since types by itself is not taken for new marks. */
  private Markup outdated(OpenRecord record, StandDraft draft) throws BadInput, StoreFailure {
    DraftedStand work = work(record, draft);
    return fault(record.wording().word("Web.changed"))
        .add(live(record, draft, work).of(work.shown(false)));
  }

  private static Markup fault(String words) {
    return new Markup()
        .open("div", "class", "fault", "role", "alert", "id", "faults")
        .element("p", words)
        .close("div");
  }

  private void type(Request request, StandDraft draft, Wording wording) throws StoreFailure {
    Map<String, String> fields = new LinkedHashMap<>();
    request.fields().keySet().stream()
        .filter(name -> !NOT_TYPED.contains(name))
        .forEach(name -> request.field(name).ifPresent(text -> fields.put(name, text)));
    draft
        .fields()
        .forEach(
            (name, value) -> {
              if (name.startsWith(StandFields.MEANT)) {
                fields.putIfAbsent(name, value);
              }
            });
    at(request, draft, fields, wording);
    draft.type(fields);
    request.field(EntryMarkup.BY).ifPresent(state::remember);
  }

  /** When it was: as typed; else when the first stand was counted. */
  private void at(Request request, StandDraft draft, Map<String, String> fields, Wording wording)
      throws StoreFailure {
    Optional<String> typed = TypedTime.changed(TypedForm.of(request));
    Map<String, String> before = draft.fields();
    boolean asked = request.fields().containsKey(TypedTime.AT);
    if (typed.isPresent()) {
      fields.put(StandFields.AT, LocalTimes.here(wording).plain(typed.get()));
      fields.put(AT_TYPED, typed.get());
    } else if (before.containsKey(StandFields.AT) && !(asked && before.containsKey(AT_TYPED))) {
      fields.put(StandFields.AT, before.get(StandFields.AT));
    } else if (draft.arrived().stream().anyMatch(StandDraft.Arrived::counted)) {
      fields.put(StandFields.AT, now());
    }
  }

  private String now() {
    return state.records().now().truncatedTo(ChronoUnit.SECONDS).toString();
  }

  private Reply act(Request request, OpenRecord record, StandDraft draft)
      throws BadInput, StoreFailure {
    String action = request.field(ACT).orElse("");
    change(request, draft);
    if (action.equals("watch")) {
      watch.begin(record.code(), draft.fields());
    } else if (action.equals("take") && request.field(UploadMarkup.PATH).isPresent()) {
      StandWatch.take(draft, PathField.read(request.field(UploadMarkup.PATH).get()));
    } else if (action.equals("discard")) {
      draft.clear();
    } else if (action.equals("keep")) {
      return keep(request, record, draft);
    }
    return isSure(request)
        ? page(200, record, draft, true)
        : Reply.seeOther(record.address(JobStep.STATIC));
  }

  /** What is done with a recording, or answered. */
  private void change(Request request, StandDraft draft) throws StoreFailure {
    String action = request.field(ACT).orElse("");
    Matcher stand = ACTION.matcher(action);
    if (stand.matches()) {
      number(draft, stand.group(1), Integer.parseInt(stand.group(2)));
    } else if (action.startsWith("meant=")) {
      draft.mean(action.substring("meant=".length()));
    }
  }

  private void number(StandDraft draft, String what, int number) throws StoreFailure {
    if (what.equals("remove")) {
      draft.remove(number);
      return;
    }
    draft.count(number, what.equals("count"));
    Map<String, String> fields = new LinkedHashMap<>(draft.fields());
    if (fields.putIfAbsent(StandFields.AT, now()) == null) {
      draft.type(fields);
    }
  }

  private static boolean isSure(Request request) {
    return request.field(EntryMarkup.SURE).isPresent();
  }

  private DraftedStand work(OpenRecord record, StandDraft draft) throws BadInput, StoreFailure {
    String by = draft.fields().getOrDefault(EntryMarkup.BY, state.initials());
    return DraftedStand.of(state.records(), record.code(), draft, by).orElseThrow();
  }

  private Reply keep(Request request, OpenRecord record, StandDraft draft)
      throws BadInput, StoreFailure {
    DraftedStand work = work(record, draft);
    SoFar found = work.found(isSure(request));
    String head = request.field(EntryMarkup.HEAD).orElse("");
    if (!head.equals(record.head().digest())) {
      return page(422, record, draft, isSure(request), Optional.of("Web.changed"));
    }
    if (found.checked().isEmpty()) {
      return page(422, record, draft, isSure(request));
    }
    state.remember(record.code(), Optional.ofNullable(draft.fields().get(AT_TYPED)));
    AddedEntry added = work.keep(found, isSure(request), record.wording());
    return kept(record.again(state), added, found.checked().get());
  }

  private Reply kept(OpenRecord record, AddedEntry added, Checked checked) {
    Wording wording = record.wording();
    Markup content = new Markup().open("div", "class", "kept-now", "role", "status");
    content.element(
        "p",
        wording.fill(
            "Web.kept",
            Argument.count(added.entry().number()),
            Argument.term(added.entry().kind())));
    RecordText.remarks(added.remarks(), wording).forEach(line -> content.element("p", line));
    content.close("div").open("p", "class", "actions");
    String report = record.base() + "/report/" + added.entry().number();
    content.element("a", wording.word("Web.report"), "class", "button", "href", report);
    content.element(
        "a",
        wording.word("Web.nextState"),
        "class",
        "button",
        "href",
        record.address(JobStep.STATIC));
    content.close("p").element("h2", wording.word("Web.result"));
    content.add(ResultMarkup.sentences(checked.result(), wording));
    content.add(
        ResultMarkup.drawings(checked.result(), DraftedStand.strips(checked, wording), wording));
    content.add(AdviceNote.of(state.records(), record));
    return record.page(200, JobStep.STATIC, content);
  }

  private Reply page(int status, OpenRecord record, StandDraft draft, boolean sure)
      throws BadInput, StoreFailure {
    return page(status, record, draft, sure, Optional.empty());
  }

  private Reply page(
      int status, OpenRecord record, StandDraft draft, boolean sure, Optional<String> notice)
      throws BadInput, StoreFailure {
    Wording wording = record.wording();
    state.showStand(record.code());
    Optional<ChosenPlate> plate = ChosenPlate.of(state.records(), draft.fields());
    if (plate.isEmpty()) {
      Markup content = new Markup();
      lastState(content, record);
      content.element("p", wording.word("Web.noPlate"));
      content
          .open("p")
          .element("a", wording.word("Web.plates"), "class", "button strong", "href", "/plates");
      return record.page(status, JobStep.STATIC, content.close("p"));
    }
    DraftedStand work = work(record, draft);
    StandForm form = new StandForm(record, work, draft, plate.get(), state);
    SoFar found = work.shown(sure);
    StandLive live = live(record, draft, work);
    Markup content = new Markup();
    notice.ifPresent(key -> content.add(fault(wording.word(key))));
    content.open("div", "class", "known-before");
    lastState(content, record);
    content.add(AheadNote.of(state.records(), record)).close("div");
    return record.standing(status, content.add(form.page(found, live.of(found))), live.step());
  }

  /** The state that was kept last: its report, what was found, and whether it still holds. */
  private static void lastState(Markup content, OpenRecord record) {
    Optional<Entry> last =
        record.view().valid().stream()
            .filter(entry -> entry.file(KeptFile.Role.REPORT).isPresent())
            .reduce((earlier, later) -> later);
    if (last.isPresent()) {
      new LastState(record, last.get()).show(content);
    }
  }

  private StandLive live(OpenRecord record, StandDraft draft, DraftedStand work)
      throws BadInput, StoreFailure {
    double stoodS = state.stoodTodayS(record.code(), record.head().digest());
    return new StandLive(record, draft, work, state.watched(record.code()), stoodS);
  }
}
