package caryatid.web;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.form.EntryForms;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.AddedEntry;
import caryatid.usecase.EntryDraft;
import caryatid.usecase.ExtendRecord;
import caryatid.usecase.RememberedParts;
import caryatid.usecase.SuggestedRows;
import caryatid.web.page.EntryMarkup;
import caryatid.web.page.EntryOffers;
import caryatid.web.page.EntryTexts;
import caryatid.web.page.FieldFaults;
import caryatid.web.page.Markup;
import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import caryatid.web.page.RowOffers;
import caryatid.web.page.TypedForm;
import caryatid.wording.EntryWords;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The correction of an entry: another one that takes its place, with the reason. */
final class CorrectPage {
  private static final String WHY = "correct-why";

  private final WindowState state;

  CorrectPage(WindowState state) {
    this.state = state;
  }

  /** The entries that can be corrected here, the newest first. */
  static void offer(Markup content, OpenRecord record) {
    Wording wording = record.wording();
    List<Entry> all = record.view().timeline().stream().map(row -> row.entry()).toList();
    content.open("details", "class", "latest");
    content.element("summary", wording.word("Web.correct.title")).open("ul", "class", "actions");
    for (int i = all.size() - 1; i >= 0; i--) {
      Optional<Entry> entry = correctable(record, all.get(i).number());
      entry.ifPresent(one -> link(content.open("li"), record, one).close("li"));
    }
    content.close("ul").element("p", wording.word("Web.correct.stand"), "class", "note");
    content.close("details");
  }

  /** A way to correct an entry. */
  static Markup link(Markup content, OpenRecord record, Entry entry) {
    String address = record.base() + "/correct/" + entry.number();
    String words = RecordFiles.about(entry, record.wording());
    return content.element("a", words, "class", "button", "href", address);
  }

  /** A stand goes with its recordings, so that it is corrected by checking them again. */
  private static Optional<Entry> correctable(OpenRecord record, int number) {
    return record.view().valid().stream()
        .filter(entry -> entry.number() == number)
        .filter(entry -> entry.kind().isAdded() && entry.kind() != EntryKind.STAND)
        .findFirst();
  }

  /** The form with what the entry says, or what became of it. */
  Reply answer(Request request, OpenRecord record) throws BadInput, StoreFailure {
    String number = request.part(3);
    Optional<Entry> entry =
        number.matches("\\d{1,6}")
            ? correctable(record, Integer.parseInt(number))
            : Optional.empty();
    if (entry.isEmpty()) {
      return Pages.missing(record.wording());
    }
    String draft = "correct-" + number;
    TypedForm typed = TypedForm.of(request);
    if (!request.changes()) {
      Map<String, String> drafted = state.draft(record.code(), draft).fields();
      TypedForm shown =
          drafted.isEmpty()
              ? EntryTexts.of(entry.get().content(), record.wording())
              : new TypedForm(drafted);
      return page(200, record, entry.get(), again(shown, FieldFaults.NONE));
    }
    String head = request.field(EntryMarkup.HEAD).orElse("");
    if (request.field(EntryPage.PART).isPresent()) {
      state.saveDraft(record.code(), draft, head, typed.texts());
      return Reply.part(new Markup().text(record.wording().word("Web.draftSaved")));
    }
    if (request.field(StepForm.DISCARD).isPresent()) {
      state.draft(record.code(), draft).clear();
      return Reply.seeOther(record.base() + "/correct/" + number);
    }
    return head.equals(record.head().digest())
        ? keep(request, record, entry.get(), typed)
        : page(
            422,
            record,
            entry.get(),
            StepForm.Again.changed(typed, record, state.keptAs(record.code(), draft, head)));
  }

  private static StepForm.Again again(TypedForm typed, FieldFaults faults) {
    return new StepForm.Again(typed, faults, List.of());
  }

  private Reply keep(Request request, OpenRecord record, Entry wrong, TypedForm typed)
      throws BadInput, StoreFailure {
    Wording wording = record.wording();
    String why = request.field(WHY).orElse("");
    if (why.isEmpty()) {
      FieldFaults faults = new FieldFaults(Map.of(), List.of(wording.word("Web.correct.noReason")));
      return page(422, record, wrong, again(typed, faults));
    }
    try {
      EntryDraft draft = draft(request, record, wrong, typed, why);
      AddedEntry added = ExtendRecord.run(state.records(), record.code(), draft);
      String name = "correct-" + wrong.number();
      state.keep(record.code(), name, record.head().digest(), added);
      state.remember(draft.by());
      state.draft(record.code(), name).clear();
      return kept(record.again(state), wrong, added);
    } catch (BadInput e) {
      FieldFaults faults =
          FieldFaults.of(EntryForms.of(wrong.kind()), e.problems(), record.wording());
      return page(422, record, wrong, new StepForm.Again(typed, faults, e.questions()));
    }
  }

  private EntryDraft draft(
      Request request, OpenRecord record, Entry wrong, TypedForm typed, String why)
      throws BadInput {
    SuggestedRows none = SuggestedRows.none(record.wording());
    return new EntryDraft(
        wrong.kind(),
        RememberedParts.complete(
            state.records(),
            record.code(),
            wrong.kind(),
            typed.given(EntryForms.of(wrong.kind()), RowOffers.of(none))),
        none,
        List.of(),
        request.field(EntryMarkup.BY).orElse(""),
        Optional.empty(),
        Optional.of(new Entry.Correction(wrong.number(), why, Optional.empty())),
        request.field(EntryMarkup.SURE).isPresent());
  }

  /** That it was corrected, and what it said before and says now. */
  private static Reply kept(OpenRecord record, Entry wrong, AddedEntry added) {
    Wording wording = record.wording();
    EntryWords words = new EntryWords(wording);
    List<String> before = words.lines(wrong.content());
    List<String> now = words.lines(added.entry().content());
    Markup content = new Markup().open("div", "class", "kept-now", "role", "status");
    content.element(
        "p",
        wording.fill(
            "Web.correct.kept",
            Argument.count(wrong.number()),
            Argument.count(added.entry().number())));
    content.close("div");
    differing(content, wording.word("Web.correct.before"), before, now);
    differing(content, wording.word("Web.correct.now"), now, before);
    content.open("p");
    content.element(
        "a", wording.word("Web.record"), "class", "button", "href", record.base() + "/record");
    content.close("p");
    return record.page(200, Optional.empty(), wording.word("Web.correct.title"), content);
  }

  private static void differing(
      Markup content, String title, List<String> lines, List<String> others) {
    content.element("h2", title).open("ul", "class", "facts");
    lines.stream()
        .filter(line -> !others.contains(line))
        .forEach(line -> content.element("li", line));
    content.close("ul");
  }

  private Reply page(int status, OpenRecord record, Entry wrong, StepForm.Again again) {
    Wording wording = record.wording();
    EntryMarkup form = new EntryMarkup(wording, again.typed(), again.faults(), state.initials());
    Markup content = new Markup().element("p", RecordFiles.about(wrong, wording), "class", "note");
    content.element("p", wording.word("Web.correct.how"));
    content.add(form.begin(record.base() + "/correct/" + wrong.number(), record.head().digest()));
    content.element(
        "button", wording.word("Web.correct.keep"), "class", "hidden", "tabindex", "-1");
    StepForm.drafted(content, again, record);
    form.own(content, WHY, wording.word("Web.correct.why"), again.typed());
    boolean both = record.head().left() && record.head().right();
    content.open("div", both ? "" : "class", "one-sided");
    form.fields(
        content,
        EntryForms.of(wrong.kind()),
        RowOffers.of(SuggestedRows.none(wording)),
        EntryOffers.of(record.view().valid(), wording));
    content.close("div");
    again.questions().forEach(question -> StepForm.asked(content, question, wording));
    form.confirm(content);
    form.close(content, wording.word("Web.correct.keep"));
    return record.page(status, Optional.empty(), wording.word("Web.correct.title"), content);
  }
}
