package caryatid.web;

import caryatid.entry.EntryKind;
import caryatid.entry.form.EntryForms;
import caryatid.entry.form.Form;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.AddedEntry;
import caryatid.usecase.EntryDraft;
import caryatid.usecase.ExtendRecord;
import caryatid.usecase.RememberedParts;
import caryatid.usecase.SuggestedRows;
import caryatid.usecase.stand.FormDraft;
import caryatid.web.page.EntryMarkup;
import caryatid.web.page.FieldFaults;
import caryatid.web.page.JobStep;
import caryatid.web.page.LocalTimes;
import caryatid.web.page.Markup;
import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import caryatid.web.page.RowOffers;
import caryatid.web.page.TypedForm;
import caryatid.web.page.TypedTime;
import caryatid.wording.EntryWords;
import caryatid.wording.RecordText;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** The steps that add an entry: the form of its kind, kept by the same use case as elsewhere. */
final class EntryPage {
  static final String PART = "part";

  private final WindowState state;
  private final EntryPhotographs photographs;
  private final StepForm form;

  EntryPage(WindowState state, EntryPhotographs photographs) {
    this.state = state;
    this.photographs = photographs;
    this.form = new StepForm(state, photographs);
  }

  StepForm form() {
    return form;
  }

  /** The page of a step, or, when its form was sent, what became of it. */
  Reply answer(Request request, OpenRecord record, JobStep step) throws BadInput, StoreFailure {
    if (request.changes()) {
      return keep(request, record, step);
    }
    Markup content = new Markup();
    open(content, record, step);
    for (EntryKind kind : step.kinds()) {
      form.section(content, record, step, kind, form.drafted(record, kind));
    }
    if (step == JobStep.CLOSING) {
      content
          .element("h2", record.wording().word("Web.takeAway"))
          .element("p", record.wording().word("Web.takeAwayKept"), "class", "note")
          .add(RecordFiles.toSave(record));
    }
    return record.keeping(200, step, content);
  }

  /** What is taken along once the visit is closed. */
  private static void takeAway(Markup content, OpenRecord record, EntryKind kind) {
    if (kind == EntryKind.CLOSING) {
      content.element("h2", record.wording().word("Web.takeAway")).add(RecordFiles.toSave(record));
    }
  }

  /** What is left open, before the visit is closed. */
  private static void open(Markup content, OpenRecord record, JobStep step) {
    if (step != JobStep.CLOSING || record.view().open().isEmpty()) {
      return;
    }
    content.element("h2", record.wording().word("Web.open"));
    content.open("ul", "class", "facts");
    RecordText.open(record.view(), record.wording())
        .forEach(line -> content.element("li", line.strip()));
    content.close("ul");
  }

  private Reply keep(Request request, OpenRecord record, JobStep step)
      throws BadInput, StoreFailure {
    EntryKind kind =
        request
            .field(StepForm.KIND)
            .flatMap(EntryKind::of)
            .filter(EntryKind::isAdded)
            .orElse(step.kinds().get(0));
    TypedForm typed = TypedForm.of(request);
    Optional<Reply> aside = aside(request, record, step, kind, typed);
    return aside.isPresent() ? aside.get() : add(request, record, step, kind, typed);
  }

  /** The form was not sent to be kept. */
  private Optional<Reply> aside(
      Request request, OpenRecord record, JobStep step, EntryKind kind, TypedForm typed)
      throws BadInput, StoreFailure {
    FormDraft drafted = state.draft(record.code(), draftName(request, kind));
    if (request.field(PART).isPresent()) {
      String head = request.field(EntryMarkup.HEAD).orElse("");
      state.saveDraft(record.code(), draftName(request, kind), head, typed.texts());
      return Optional.of(Reply.part(new Markup().text(record.wording().word("Web.draftSaved"))));
    }
    if (request.field(StepForm.DISCARD).isPresent()) {
      drafted.clear();
      state.photographs(record.code(), kind).clear();
      return Optional.of(Reply.seeOther(record.address(step)));
    }
    Optional<List<String>> acted = photographs.act(request, record, kind);
    if (acted.isPresent()) {
      drafted.type(typed.texts());
      FieldFaults faults = new FieldFaults(Map.of(), acted.get());
      return Optional.of(
          acted.get().isEmpty()
              ? Reply.seeOther(record.address(step))
              : again(record, step, kind, new StepForm.Again(typed, faults, List.of())));
    }
    return Optional.empty();
  }

  /** Under which name the form's draft is kept: its kind's, or that of an answer. */
  private static String draftName(Request request, EntryKind kind) {
    return request
        .field(StepForm.DRAFT)
        .filter(name -> kind == EntryKind.ACCEPTED && AnswerPage.NAME.matcher(name).matches())
        .orElse(kind.key());
  }

  private Reply add(
      Request request, OpenRecord record, JobStep step, EntryKind kind, TypedForm typed)
      throws BadInput, StoreFailure {
    String head = request.field(EntryMarkup.HEAD).orElse("");
    if (!head.equals(record.head().digest())) {
      OptionalInt already = state.keptAs(record.code(), draftName(request, kind), head);
      return again(record, step, kind, StepForm.Again.changed(typed, record, already));
    }
    Optional<String> noTime = TypedTime.fault(typed, LocalTimes.here(record.wording()));
    if (noTime.isPresent()) {
      FieldFaults faults = FieldFaults.ofTime(noTime.get());
      return again(record, step, kind, new StepForm.Again(typed, faults, List.of()));
    }
    try {
      EntryDraft draft = draft(request, record, kind, typed);
      AddedEntry added = ExtendRecord.run(state.records(), record.code(), draft);
      state.keep(record.code(), draftName(request, kind), head, added);
      state.remember(draft.by());
      state.remember(record.code(), TypedTime.changed(typed));
      state.draft(record.code(), draftName(request, kind)).clear();
      state.photographs(record.code(), kind).clear();
      return kept(record, step, added, draft);
    } catch (BadInput e) {
      FieldFaults faults = FieldFaults.of(EntryForms.of(kind), e.problems(), record.wording());
      return again(record, step, kind, new StepForm.Again(typed, faults, e.questions()));
    }
  }

  private EntryDraft draft(Request request, OpenRecord record, EntryKind kind, TypedForm typed)
      throws BadInput, StoreFailure {
    Form fields = EntryForms.of(kind);
    SuggestedRows suggested = form.suggested(record, kind);
    return new EntryDraft(
        kind,
        RememberedParts.complete(
            state.records(), record.code(), kind, typed.given(fields, RowOffers.of(suggested))),
        suggested,
        state.photographs(record.code(), kind).attached(),
        request.field(EntryMarkup.BY).orElse(""),
        TypedTime.of(typed, LocalTimes.here(record.wording())),
        Optional.empty(),
        request.field(EntryMarkup.SURE).isPresent());
  }

  /** Somebody else added to the record since the form was made: what, before it is sent again. */
  static FieldFaults changed(OpenRecord record) {
    Wording wording = record.wording();
    return new FieldFaults(
        Map.of(),
        List.of(
            wording.word("Web.changed"),
            wording.fill("Web.keptUpTo", Argument.count(record.head().newest()))));
  }

  /** The form with what is wrong first, then what else was typed in this step. */
  private Reply again(OpenRecord record, JobStep step, EntryKind kind, StepForm.Again again)
      throws BadInput, StoreFailure {
    Markup content = new Markup();
    form.section(content, record, step, kind, again);
    others(content, record, step, kind);
    return record.keeping(422, step, content);
  }

  private void others(Markup content, OpenRecord record, JobStep step, EntryKind kind)
      throws BadInput, StoreFailure {
    for (EntryKind other : step.kinds()) {
      if (other != kind) {
        form.section(content, record, step, other, form.drafted(record, other));
      }
    }
  }

  /** What was kept, with what must be known about it. */
  private Reply kept(OpenRecord before, JobStep step, AddedEntry added, EntryDraft draft)
      throws BadInput, StoreFailure {
    Wording wording = before.wording();
    OpenRecord record = before.again(state);
    Markup content = kept(added, wording);
    draft.understood(wording).forEach(line -> content.element("p", line));
    content
        .open("p")
        .element("a", wording.word("Web.addMore"), "class", "button", "href", record.address(step));
    content.close("p");
    takeAway(content, record, draft.kind());
    others(content, record, step, draft.kind());
    return draft.kind() == step.kinds().get(0)
        ? record.page(200, step, content)
        : record.keeping(200, step, content);
  }

  /** That it was kept, and what it says. */
  static Markup kept(AddedEntry added, Wording wording) {
    Markup content = new Markup().open("div", "class", "kept-now", "role", "status");
    content.element(
        "p",
        wording.fill(
            "Web.kept",
            Argument.count(added.entry().number()),
            Argument.term(added.entry().kind())));
    RecordText.remarks(added.remarks(), wording).forEach(line -> content.element("p", line));
    content.close("div");
    new EntryWords(wording)
        .lines(added.entry().content())
        .forEach(line -> content.element("p", line));
    return content;
  }
}
