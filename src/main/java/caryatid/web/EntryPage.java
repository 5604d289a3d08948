package caryatid.web;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.form.EntryForms;
import caryatid.entry.form.Form;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Question;
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

/** The steps that add an entry: the form of its kind, kept by the same use case as elsewhere. */
final class EntryPage {
  private static final String KIND = "entry-kind";
  private static final String OWN_WORDS = ".text";
  private static final String PART = "part";
  private static final String DISCARD = "discard";

  private final WindowState state;

  EntryPage(WindowState state) {
    this.state = state;
  }

  /**
   * What a form is shown again with.
   *
   * @param typed what was typed
   * @param faults what is wrong
   * @param questions what is asked
   */
  record Again(TypedForm typed, FieldFaults faults, List<Question> questions) {}

  /** The page of a step, or, when its form was sent, what became of it. */
  Reply answer(Request request, OpenRecord record, JobStep step) throws BadInput, StoreFailure {
    if (request.changes()) {
      return keep(request, record, step);
    }
    Markup content = new Markup();
    open(content, record, step);
    for (EntryKind kind : step.kinds()) {
      section(content, record, step, kind, drafted(record, kind));
    }
    return record.keeping(200, step, content);
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

  /** What was typed before and is not kept yet. */
  Again drafted(OpenRecord record, EntryKind kind) throws BadInput, StoreFailure {
    return new Again(
        new TypedForm(state.draft(record.code(), kind).fields()), FieldFaults.NONE, List.of());
  }

  private void section(Markup content, OpenRecord record, JobStep step, EntryKind kind, Again again)
      throws BadInput {
    if (kind == step.kinds().get(0)) {
      latest(content, record, kind);
      content.add(form(record, step, kind, again));
      return;
    }
    boolean begun = !again.faults().isEmpty() || isDraft(again);
    String title = record.wording().word(kind);
    String mark = begun ? " \u00b7 " + record.wording().word("Web.draft") : "";
    content.open("details", "class", "latest", begun ? "open" : "", "");
    content.element("summary", title + mark);
    latest(content, record, kind);
    content.add(form(record, step, kind, again)).close("details");
  }

  private static boolean isDraft(Again again) {
    return again.typed().texts().containsKey(EntryMarkup.HEAD);
  }

  /** What the record says of it already. */
  private static void latest(Markup content, OpenRecord record, EntryKind kind) {
    List<Entry> all = record.view().valid().stream().filter(e -> e.kind() == kind).toList();
    if (all.isEmpty()) {
      return;
    }
    Wording wording = record.wording();
    content.open("details", "class", "latest", "open", "");
    content.element("summary", wording.word("Web.saidBefore"));
    Entry last = all.get(all.size() - 1);
    new EntryWords(wording).lines(last.content()).forEach(line -> content.element("p", line));
    content.close("details");
  }

  /** The form of a kind. */
  Markup form(OpenRecord record, JobStep step, EntryKind kind, Again again) throws BadInput {
    Wording wording = record.wording();
    EntryMarkup form = new EntryMarkup(wording, again.typed(), again.faults(), state.initials());
    boolean steps = kind == step.kinds().get(0);
    String digest = record.head().digest();
    Markup content =
        steps
            ? form.beginStep(record.address(step), digest)
            : form.begin(record.address(step), digest);
    content.open("input", "type", "hidden", "name", KIND, "value", kind.key());
    drafted(content, again, wording);
    boolean both = record.head().left() && record.head().right();
    content.open("div", both ? "" : "class", "one-sided");
    form.fields(content, EntryForms.of(kind), offers(record, kind));
    content.close("div");
    again.questions().forEach(question -> asked(content, question, wording));
    if (steps) {
      form.endStep(content, state.records().now());
    } else {
      form.end(content, wording.word("Web.keep"), state.records().now());
    }
    return content;
  }

  /** That what stands in the form was typed before; the way to begin anew. */
  private static void drafted(Markup content, Again again, Wording wording) {
    if (again.faults().isEmpty() && isDraft(again)) {
      content.open("p", "class", "kept-now drafted").text(wording.word("Web.drafted") + " ");
      // The first button is the one that Enter presses.
      content.element("button", wording.word("Web.keep"), "class", "strong");
      content.element(
          "button",
          wording.word("Web.discard"),
          "name",
          DISCARD,
          "value",
          "yes",
          "formnovalidate",
          "");
      content.close("p");
    }
  }

  /** A name that is nearly a known one may be meant as it is: then it is taken as plain words. */
  private static void asked(Markup content, Question question, Wording wording) {
    if (question.answer().endsWith(OWN_WORDS)) {
      String says = question.line().substring(question.line().indexOf('=') + 1);
      String id = "so-" + question.answer();
      content.open("div", "class", "field check");
      content.open("input", "type", "checkbox", "id", id, "name", question.answer(), "value", says);
      content.element("label", wording.word("Web.isSo") + ": " + says, "for", id);
      content.close("div");
    }
  }

  private RowOffers offers(OpenRecord record, EntryKind kind) throws BadInput {
    return RowOffers.of(suggested(record, kind));
  }

  private SuggestedRows suggested(OpenRecord record, EntryKind kind) throws BadInput {
    return SuggestedRows.in(state.records(), record.code(), kind, record.wording());
  }

  private Reply keep(Request request, OpenRecord record, JobStep step)
      throws BadInput, StoreFailure {
    EntryKind kind =
        request
            .field(KIND)
            .flatMap(EntryKind::of)
            .filter(EntryKind::isAdded)
            .orElse(step.kinds().get(0));
    TypedForm typed = TypedForm.of(request);
    FormDraft drafted = state.draft(record.code(), kind);
    if (request.field(PART).isPresent()) {
      String head = request.field(EntryMarkup.HEAD).orElse("");
      state.saveDraft(record.code(), kind, head, typed.texts());
      return Reply.part(new Markup().text(record.wording().word("Web.draftSaved")));
    }
    if (request.field(DISCARD).isPresent()) {
      drafted.clear();
      return Reply.seeOther(record.address(step));
    }
    if (!request.field(EntryMarkup.HEAD).equals(Optional.of(record.head().digest()))) {
      return again(record, step, kind, new Again(typed, changed(record), List.of()));
    }
    Optional<String> noTime = TypedTime.unreadable(typed);
    if (noTime.isPresent()) {
      FieldFaults faults = FieldFaults.NONE.andTime(noTime, record.wording());
      return again(record, step, kind, new Again(typed, faults, List.of()));
    }
    try {
      EntryDraft draft = draft(request, record, kind, typed);
      AddedEntry added = ExtendRecord.run(state.records(), record.code(), draft);
      state.keep(record.code(), kind, record.head().digest());
      state.remember(draft.by());
      drafted.clear();
      return kept(record, step, added, draft);
    } catch (BadInput e) {
      FieldFaults faults = FieldFaults.of(EntryForms.of(kind), e.problems(), record.wording());
      return again(record, step, kind, new Again(typed, faults, e.questions()));
    }
  }

  private EntryDraft draft(Request request, OpenRecord record, EntryKind kind, TypedForm typed)
      throws BadInput {
    Form form = EntryForms.of(kind);
    SuggestedRows suggested = suggested(record, kind);
    return new EntryDraft(
        kind,
        RememberedParts.complete(
            state.records(), record.code(), kind, typed.given(form, RowOffers.of(suggested))),
        suggested,
        List.of(),
        request.field(EntryMarkup.BY).orElse(""),
        TypedTime.of(typed),
        Optional.empty(),
        request.field(EntryMarkup.SURE).isPresent());
  }

  /** Somebody else added to the record since the form was made: what, before it is sent again. */
  private static FieldFaults changed(OpenRecord record) {
    Wording wording = record.wording();
    return new FieldFaults(
        Map.of(),
        List.of(
            wording.word("Web.changed"),
            wording.fill("Web.keptUpTo", Argument.count(record.head().newest()))));
  }

  /** The form with what is wrong first, then what else was typed in this step. */
  private Reply again(OpenRecord record, JobStep step, EntryKind kind, Again again)
      throws BadInput, StoreFailure {
    Markup content = new Markup();
    section(content, record, step, kind, again);
    others(content, record, step, kind);
    return record.keeping(422, step, content);
  }

  private void others(Markup content, OpenRecord record, JobStep step, EntryKind kind)
      throws BadInput, StoreFailure {
    for (EntryKind other : step.kinds()) {
      if (other != kind) {
        section(content, record, step, other, drafted(record, other));
      }
    }
  }

  /** What was kept, with what must be known about it. */
  private Reply kept(OpenRecord before, JobStep step, AddedEntry added, EntryDraft draft)
      throws BadInput, StoreFailure {
    Wording wording = before.wording();
    OpenRecord record = before.again(state);
    Markup content = new Markup().open("div", "class", "kept-now", "role", "status");
    content.element(
        "p",
        wording.fill(
            "Web.kept",
            Argument.count(added.entry().number()),
            Argument.term(added.entry().kind())));
    draft.understood(wording).forEach(line -> content.element("p", line));
    RecordText.remarks(added.remarks(), wording).forEach(line -> content.element("p", line));
    content.close("div");
    new EntryWords(wording)
        .lines(added.entry().content())
        .forEach(line -> content.element("p", line));
    content
        .open("p")
        .element("a", wording.word("Web.addMore"), "class", "button", "href", record.address(step));
    content.close("p");
    others(content, record, step, draft.kind());
    return draft.kind() == step.kinds().get(0)
        ? record.page(200, step, content)
        : record.keeping(200, step, content);
  }
}
