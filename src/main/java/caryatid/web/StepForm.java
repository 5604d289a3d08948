package caryatid.web;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.form.EntryForms;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Question;
import caryatid.remark.StoreFailure;
import caryatid.usecase.SuggestedRows;
import caryatid.web.page.EntryMarkup;
import caryatid.web.page.EntryOffers;
import caryatid.web.page.FieldFaults;
import caryatid.web.page.JobStep;
import caryatid.web.page.Markup;
import caryatid.web.page.RowOffers;
import caryatid.web.page.TypedForm;
import caryatid.wording.EntryWords;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** The form of an entry in a step, with what was typed, what waits and what is asked. */
final class StepForm {
  static final String KIND = "entry-kind";
  static final String DISCARD = "discard";

  /** Of a form that is not its kind's usual one: under which name its draft is kept. */
  static final String DRAFT = "draft-name";

  private static final String OWN_WORDS = ".text";

  private final WindowState state;
  private final EntryPhotographs photographs;

  StepForm(WindowState state, EntryPhotographs photographs) {
    this.state = state;
    this.photographs = photographs;
  }

  /**
   * What a form is shown again with.
   *
   * @param typed what was typed
   * @param faults what is wrong
   * @param questions what is asked
   * @param keptAs the entry that the same form was kept as before; empty if it was not
   */
  record Again(TypedForm typed, FieldFaults faults, List<Question> questions, OptionalInt keptAs) {
    Again(TypedForm typed, FieldFaults faults, List<Question> questions) {
      this(typed, faults, questions, OptionalInt.empty());
    }

    /** A form of a page from before the record changed: by this form itself, or by another. */
    static Again changed(TypedForm typed, OpenRecord record, OptionalInt keptAs) {
      FieldFaults faults = keptAs.isPresent() ? FieldFaults.NONE : EntryPage.changed(record);
      return new Again(typed, faults, List.of(), keptAs);
    }

    private Optional<String> text(String name) {
      return Optional.ofNullable(typed.texts().get(name));
    }
  }

  /** What was typed before and is not kept yet. */
  Again drafted(OpenRecord record, EntryKind kind) throws BadInput, StoreFailure {
    return new Again(
        new TypedForm(state.draft(record.code(), kind).fields()), FieldFaults.NONE, List.of());
  }

  void section(Markup content, OpenRecord record, JobStep step, EntryKind kind, Again again)
      throws BadInput, StoreFailure {
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
    content.open("p").text(wording.word("Web.correct.title") + ": ");
    CorrectPage.link(content, record, last).close("p").close("details");
  }

  /** The form of a kind. */
  Markup form(OpenRecord record, JobStep step, EntryKind kind, Again again)
      throws BadInput, StoreFailure {
    Wording wording = record.wording();
    EntryMarkup form =
        new EntryMarkup(
            wording,
            again.typed(),
            again.faults(),
            state.initials(),
            kind == step.kinds().get(0) ? "" : kind.key() + "-");
    boolean steps = kind == step.kinds().get(0);
    String digest = record.head().digest();
    Markup content =
        steps
            ? form.beginStep(record.address(step), digest)
            : form.begin(record.address(step), digest);
    content.open("input", "type", "hidden", "name", KIND, "value", kind.key());
    again
        .text(DRAFT)
        .ifPresent(name -> content.open("input", "type", "hidden", "name", DRAFT, "value", name));
    // The first button is the one that Enter presses.
    content.element("button", wording.word("Web.keep"), "class", "hidden", "tabindex", "-1");
    drafted(content, again, record);
    boolean both = record.head().left() && record.head().right();
    content.open("div", both ? "" : "class", "one-sided");
    EntryOffers entries = EntryOffers.of(record.view().valid(), wording);
    form.fields(content, EntryForms.of(kind), offers(record, kind), entries);
    content.close("div");
    again.questions().forEach(question -> asked(content, question, wording));
    content.add(photographs.section(record, step, kind));
    if (steps) {
      form.endStep(content, state.time(record.code()));
    } else {
      form.end(content, wording.word("Web.keep"), state.time(record.code()));
    }
    return content;
  }

  /** That what stands in the form was typed before; the way to begin anew. */
  static void drafted(Markup content, Again again, OpenRecord record) {
    Wording wording = record.wording();
    if (again.keptAs().isPresent()) {
      content.open("p", "class", "kept-now", "role", "status");
      content.text(
          wording.fill("Web.keptAlready", Argument.count(again.keptAs().getAsInt())) + " ");
      content.element("a", wording.word("Web.record"), "href", record.base() + "/record");
      content.close("p");
    } else if (again.faults().isEmpty() && isDraft(again)) {
      content.open("p", "class", "kept-now drafted").text(wording.word("Web.drafted") + " ");
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
  static void asked(Markup content, Question question, Wording wording) {
    if (question.answer().endsWith(OWN_WORDS)) {
      String says = question.line().substring(question.line().indexOf('=') + 1);
      String id = "so-" + question.answer();
      content.open("div", "class", "field check");
      content.open("input", "type", "checkbox", "id", id, "name", question.answer(), "value", says);
      content.element("label", wording.word("Web.isSo") + ": " + says, "for", id);
      content.close("div");
    }
  }

  private RowOffers offers(OpenRecord record, EntryKind kind) throws BadInput, StoreFailure {
    return RowOffers.of(suggested(record, kind));
  }

  SuggestedRows suggested(OpenRecord record, EntryKind kind) throws BadInput, StoreFailure {
    return SuggestedRows.in(state.records(), record.code(), kind, record.wording());
  }
}
