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
import caryatid.wording.RecordHead;
import caryatid.wording.RecordText;
import caryatid.wording.Wording;
import java.util.LinkedHashMap;
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
    for (EntryKind kind : step.kinds()) {
      section(content, record, step, kind, drafted(record, kind));
    }
    return record.page(200, step, content);
  }

  /** What was typed before and is not kept yet. */
  Again drafted(OpenRecord record, EntryKind kind) throws BadInput, StoreFailure {
    return new Again(
        new TypedForm(state.draft(record.code(), kind).fields()), FieldFaults.NONE, List.of());
  }

  private void section(Markup content, OpenRecord record, JobStep step, EntryKind kind, Again again)
      throws BadInput {
    String title = record.wording().word(kind);
    if (step.kinds().size() > 1 && !title.equalsIgnoreCase(record.wording().word(step.key()))) {
      content.element("h2", title);
    }
    latest(content, record, kind);
    content.add(form(record, step, kind, again));
  }

  /** What the record says of it already. */
  private static void latest(Markup content, OpenRecord record, EntryKind kind) {
    List<Entry> all = record.view().valid().stream().filter(e -> e.kind() == kind).toList();
    if (all.isEmpty()) {
      return;
    }
    Wording wording = record.wording();
    content.open("details", "class", "latest");
    content.element("summary", wording.word("Web.saidBefore"));
    Entry last = all.get(all.size() - 1);
    new EntryWords(wording).lines(last.content()).forEach(line -> content.element("p", line));
    content.close("details");
  }

  /** The form of a kind. */
  Markup form(OpenRecord record, JobStep step, EntryKind kind, Again again) throws BadInput {
    Wording wording = record.wording();
    EntryMarkup form = new EntryMarkup(wording, again.typed(), again.faults(), state.initials());
    Markup content = form.begin(record.address(step), record.head().digest());
    content.open("input", "type", "hidden", "name", KIND, "value", kind.key());
    drafted(content, again, wording);
    form.fields(content, EntryForms.of(kind), offers(record, kind));
    again.questions().forEach(question -> asked(content, question, wording));
    form.end(content, wording.word("Web.keep"), state.records().now());
    return content;
  }

  /** That what stands in the form was typed before; the way to begin anew. */
  private static void drafted(Markup content, Again again, Wording wording) {
    if (again.faults().isEmpty() && again.typed().texts().containsKey(EntryMarkup.HEAD)) {
      content.open("p", "class", "kept-now drafted").text(wording.word("Web.drafted") + " ");
      content.element("button", wording.word("Web.discard"), "name", DISCARD, "value", "yes");
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
      // One that arrives after its form was kept would be offered again.
      if (request.field(EntryMarkup.HEAD).equals(Optional.of(record.head().digest()))) {
        drafted.type(typed.texts());
      }
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

  private Reply again(OpenRecord record, JobStep step, EntryKind kind, Again again)
      throws BadInput {
    Markup content = new Markup();
    section(content, record, step, kind, again);
    return record.page(422, step, content);
  }

  /** What was kept, with what must be known about it. */
  private Reply kept(OpenRecord before, JobStep step, AddedEntry added, EntryDraft draft)
      throws BadInput {
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
    return record.page(200, step, content);
  }

  /** What an answer is about: the line that was chosen, and the stand it was seen in. */
  private static Map<String, String> said(Request request, List<RecordHead.Unsafe> lines) {
    int number =
        request.field("line").filter(n -> n.matches("\\d{1,3}")).map(Integer::parseInt).orElse(0);
    if (number < 1 || number > lines.size()) {
      return Map.of();
    }
    RecordHead.Unsafe line = lines.get(number - 1);
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("what", line.words().strip());
    line.stand().ifPresent(stand -> texts.put("stand", Integer.toString(stand)));
    return texts;
  }

  /** The form that takes something unsafe as it is, with the reason. */
  Reply answerTo(Request request, OpenRecord record) throws BadInput {
    Map<String, String> texts = said(request, record.head().unsafe());
    Markup content = new Markup();
    content.add(
        form(
            record,
            JobStep.CLOSING,
            EntryKind.ACCEPTED,
            new Again(new TypedForm(texts), FieldFaults.NONE, List.of())));
    return record.page(200, Optional.empty(), record.wording().word("Web.answer"), content);
  }
}
