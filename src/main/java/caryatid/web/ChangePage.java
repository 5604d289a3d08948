package caryatid.web;

import caryatid.entry.EntryKind;
import caryatid.entry.form.EntryForms;
import caryatid.remark.BadInput;
import caryatid.remark.Question;
import caryatid.remark.StoreFailure;
import caryatid.usecase.AddedEntry;
import caryatid.usecase.EntryDraft;
import caryatid.usecase.ExtendRecord;
import caryatid.usecase.SuggestedRows;
import caryatid.usecase.stand.AlignmentChange;
import caryatid.usecase.stand.AlignmentChange.Changeable;
import caryatid.usecase.stand.AlignmentChange.WayBack;
import caryatid.usecase.stand.StandDraft;
import caryatid.usecase.stand.StandFields;
import caryatid.web.page.ChangeMarkup;
import caryatid.web.page.ChangeOffer;
import caryatid.web.page.EntryMarkup;
import caryatid.web.page.FieldFaults;
import caryatid.web.page.JobStep;
import caryatid.web.page.LocalTimes;
import caryatid.web.page.Markup;
import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import caryatid.web.page.RowOffers;
import caryatid.web.page.TypedForm;
import caryatid.web.page.TypedSetting;
import caryatid.web.page.TypedTime;
import caryatid.wording.VisitText;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A change of alignment in one step, or one step back to the last good setting: kept as an entry
 * about the bench alignment, with the torques after it.
 */
final class ChangePage {
  private static final EntryKind KIND = EntryKind.BENCH_ALIGNMENT;
  private static final String SET = "set";

  /** The part of the page that says what a change comes to. */
  private static final String COMES_TO = "comes-to";

  private static final Pattern WHY = Pattern.compile("items\\[\\d{1,2}]\\.why");

  private final WindowState state;

  ChangePage(WindowState state) {
    this.state = state;
  }

  /** The page of a change, or what became of it. */
  Reply change(Request request, OpenRecord record) throws BadInput, StoreFailure {
    AlignmentChange change = settings(record);
    ChangeOffer offer =
        new ChangeOffer("change", change.offered(), change.fasteners(), Optional.empty());
    return answer(request, record, change, offer);
  }

  /** The page of the way back, or what became of it. */
  Reply back(Request request, OpenRecord record) throws BadInput, StoreFailure {
    AlignmentChange change = settings(record);
    WayBack way = AlignmentChange.back(state.records(), record.code());
    ChangeOffer offer = new ChangeOffer("back", List.of(), change.fasteners(), Optional.of(way));
    return answer(request, record, change, offer);
  }

  private AlignmentChange settings(OpenRecord record) throws BadInput {
    SuggestedRows usual = SuggestedRows.in(state.records(), record.code(), KIND, record.wording());
    return AlignmentChange.of(record.view().valid(), usual, record.wording());
  }

  private Reply answer(
      Request request, OpenRecord record, AlignmentChange change, ChangeOffer offer)
      throws BadInput, StoreFailure {
    TypedForm typed = TypedForm.of(request);
    if (!request.changes()) {
      TypedForm drafted = new TypedForm(state.draft(record.code(), offer.form()).fields());
      return page(
          200, record, change, offer, new StepForm.Again(drafted, FieldFaults.NONE, List.of()));
    }
    if (request.field(EntryPage.PART).equals(Optional.of(COMES_TO))) {
      return Reply.part(new Markup().text(offer.comesTo(request, record.wording())));
    }
    if (request.field(EntryPage.PART).isPresent()) {
      String head = request.field(EntryMarkup.HEAD).orElse("");
      state.saveDraft(record.code(), offer.form(), head, typed.texts());
      return Reply.part(new Markup().text(record.wording().word("Web.draftSaved")));
    }
    if (request.field(StepForm.DISCARD).isPresent()) {
      state.draft(record.code(), offer.form()).clear();
      return Reply.seeOther(record.base() + "/" + offer.form());
    }
    String head = request.field(EntryMarkup.HEAD).orElse("");
    if (!head.equals(record.head().digest())) {
      OptionalInt already = state.keptAs(record.code(), offer.form(), head);
      return page(422, record, change, offer, StepForm.Again.changed(typed, record, already));
    }
    Optional<FieldFaults> wrong = wrong(request, record, offer, typed);
    if (wrong.isPresent()) {
      return page(422, record, change, offer, new StepForm.Again(typed, wrong.get(), List.of()));
    }
    try {
      return keep(request, record, change, offer);
    } catch (BadInput e) {
      FieldFaults faults = FieldFaults.of(EntryForms.of(KIND), e.problems(), record.wording());
      return page(422, record, change, offer, new StepForm.Again(typed, faults, e.questions()));
    }
  }

  private static Optional<FieldFaults> wrong(
      Request request, OpenRecord record, ChangeOffer offer, TypedForm typed) {
    Wording wording = record.wording();
    Map<String, String> unset = offer.faults(request, wording);
    if (!unset.isEmpty()) {
      return Optional.of(at(unset));
    }
    Optional<String> noTime = TypedTime.fault(typed, LocalTimes.here(wording));
    return noTime.map(FieldFaults::ofTime);
  }

  private static FieldFaults at(Map<String, String> fields) {
    Map<String, List<String>> faults = new LinkedHashMap<>();
    fields.forEach((field, said) -> faults.put(field, List.of(said)));
    return new FieldFaults(faults, List.of());
  }

  private Reply keep(Request request, OpenRecord record, AlignmentChange change, ChangeOffer offer)
      throws BadInput, StoreFailure {
    List<String> said = new ArrayList<>();
    Map<String, String> fields = fields(request, change, offer, record.wording(), said);
    TypedForm typed = TypedForm.of(request);
    EntryDraft draft = draft(request, typed, new TypedForm(fields), record.wording());
    AddedEntry added = ExtendRecord.run(state.records(), record.code(), draft);
    state.keep(record.code(), offer.form(), record.head().digest(), added);
    state.remember(draft.by());
    state.remember(record.code(), TypedTime.changed(typed));
    state.draft(record.code(), offer.form()).clear();
    if (!said.isEmpty()) {
      tell(record, said);
    }
    return kept(record.again(state), added);
  }

  /** The rows of the entry; what they say is added to what is told. */
  private static Map<String, String> fields(
      Request request,
      AlignmentChange change,
      ChangeOffer offer,
      Wording wording,
      List<String> said) {
    Map<String, String> fields = new LinkedHashMap<>();
    List<Changeable> turns = offer.turns(change);
    for (int i = 0; i < turns.size(); i++) {
      String to = turns.get(i).now().orElseThrow().toPlainString();
      AlignmentChange.row(fields, i + 1, turns.get(i), to);
      said.add(AlignmentChange.to(turns.get(i), to));
    }
    Optional<Changeable> chosen = offer.chosen(request);
    if (chosen.isPresent()) {
      TypedSetting set = TypedSetting.of(chosen.get(), request);
      AlignmentChange.row(fields, 1, chosen.get(), set.set());
      said.add(set.said(wording));
    }
    boolean secured = request.field(ChangeMarkup.SECURED).isPresent();
    for (int i = 0; i < offer.fasteners().size(); i++) {
      Changeable one = offer.fasteners().get(i);
      int row = first(turns) + i;
      String known = secured ? one.now().orElseThrow().toPlainString() : "";
      AlignmentChange.row(
          fields, row, one, request.field(AlignmentChange.lead(row) + SET).orElse(known));
    }
    request.fields().keySet().stream()
        .filter(name -> WHY.matcher(name).matches())
        .forEach(name -> request.field(name).ifPresent(text -> fields.put(name, text)));
    return fields;
  }

  private static int first(List<Changeable> turns) {
    return Math.max(1, turns.size()) + 1;
  }

  private static EntryDraft draft(
      Request request, TypedForm typed, TypedForm fields, Wording wording) {
    SuggestedRows none = SuggestedRows.none(wording);
    return new EntryDraft(
        KIND,
        fields.given(EntryForms.of(KIND), RowOffers.of(none)),
        none,
        List.of(),
        request.field(EntryMarkup.BY).orElse(""),
        TypedTime.of(typed, LocalTimes.here(wording)),
        Optional.empty(),
        request.field(EntryMarkup.SURE).isPresent());
  }

  /**
   * The next state says what was changed before it; one that is drafted stood before the change.
   */
  private void tell(OpenRecord record, List<String> said) throws BadInput, StoreFailure {
    StandDraft draft = state.draft(record.code());
    if (draft.arrived().isEmpty()) {
      Map<String, String> fields = new LinkedHashMap<>(draft.fields());
      fields.put(StandFields.CHANGED, String.join("; ", said));
      draft.type(fields);
    }
  }

  private static Reply kept(OpenRecord record, AddedEntry added) {
    Wording wording = record.wording();
    Markup content = EntryPage.kept(added, wording);
    content.open("p", "class", "actions");
    String stand = record.address(JobStep.STATIC);
    content.element("a", wording.word("Web.standAgain"), "class", "button strong", "href", stand);
    content.element(
        "a",
        wording.word("Web.change.title"),
        "class",
        "button",
        "href",
        record.base() + "/change");
    content.close("p").element("p", wording.word("Web.change.old"), "class", "note");
    return record.page(200, Optional.empty(), wording.word("Web.change.title"), content);
  }

  private Reply page(
      int status,
      OpenRecord record,
      AlignmentChange change,
      ChangeOffer offer,
      StepForm.Again again)
      throws StoreFailure, BadInput {
    Wording wording = record.wording();
    Markup content = new Markup();
    boolean empty = false;
    if (offer.back().isPresent()) {
      WayBack way = offer.back().get();
      ShowPage.lines(content, VisitText.forPage(way.to(), way.good(), record.code(), wording));
      empty = offer.turns(change).isEmpty();
    }
    if (!empty) {
      content.add(form(record, change, offer, again));
    }
    String title = offer.back().isPresent() ? "Web.lastGood" : "Web.change.title";
    return record.page(status, Optional.empty(), wording.word(title), content);
  }

  private Markup form(
      OpenRecord record, AlignmentChange change, ChangeOffer offer, StepForm.Again again) {
    Wording wording = record.wording();
    EntryMarkup form = new EntryMarkup(wording, again.typed(), again.faults(), state.initials());
    Markup out = form.begin(record.base() + "/" + offer.form(), record.head().digest());
    StepForm.drafted(out, again, record);
    out.element("p", wording.word("Web.change.caution"), "class", "danger");
    ChangeMarkup fields = new ChangeMarkup(wording, again.typed(), again.faults());
    List<Changeable> turns = offer.turns(change);
    if (offer.back().isEmpty()) {
      fields.change(offer.offered());
    }
    fields.fasteners(offer.fasteners(), first(turns));
    out.add(offer.back().isEmpty() ? fields.why(1) : whys(fields, again.questions()));
    form.end(out, wording.word("Web.change.keep"), state.time(record.code()));
    return out;
  }

  /** Reasons for what is asked about a way back. */
  private static Markup whys(ChangeMarkup fields, List<Question> questions) {
    List<Integer> rows =
        questions.stream()
            .map(Question::answer)
            .filter(answer -> WHY.matcher(answer).matches())
            .map(answer -> Integer.valueOf(answer.replaceAll("\\D", "")))
            .distinct()
            .collect(Collectors.toList());
    rows.forEach(fields::why);
    return fields.all();
  }
}
