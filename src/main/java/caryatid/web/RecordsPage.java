package caryatid.web;

import caryatid.entry.EntryKind;
import caryatid.entry.form.EntryForms;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.usecase.EntryDraft;
import caryatid.usecase.ListRecords;
import caryatid.usecase.StartRecord;
import caryatid.usecase.SuggestedRows;
import caryatid.usecase.UnpackRecord;
import caryatid.usecase.VerifyRecord;
import caryatid.usecase.file.LocalFiles;
import caryatid.web.page.EntryMarkup;
import caryatid.web.page.EntryOffers;
import caryatid.web.page.FieldFaults;
import caryatid.web.page.Frame;
import caryatid.web.page.JobStep;
import caryatid.web.page.LocalTimes;
import caryatid.web.page.Markup;
import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import caryatid.web.page.RowOffers;
import caryatid.web.page.TypedForm;
import caryatid.web.page.TypedTime;
import caryatid.web.page.UploadMarkup;
import caryatid.web.page.VerifiedMarkup;
import caryatid.wording.RecordText;
import caryatid.wording.Wording;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The list of records, and the start of one. */
final class RecordsPage {
  private static final String CODE = "record-code";

  private final WindowState state;
  private final Uploads uploads;

  RecordsPage(WindowState state, Uploads uploads) {
    this.state = state;
    this.uploads = uploads;
  }

  /** All records. */
  Reply list(Wording wording) throws StoreFailure {
    List<ListRecords.Listed> all = ListRecords.run(state.records());
    Markup content = new Markup();
    content
        .open("p")
        .element("a", wording.word("Web.start"), "class", "button strong", "href", "/new");
    content.close("p");
    if (all.isEmpty()) {
      content.element("p", wording.word("Web.noRecords"));
    }
    content.open("ul", "class", "records");
    for (ListRecords.Listed record : all) {
      content.open("li");
      if (record.erasure().isPresent()) {
        content.element("span", RecordText.erased(record.code(), record.erasure().get(), wording));
      } else {
        String address = state.base(record.code()) + "/" + JobStep.ARRIVING.path();
        content.element("a", record.code(), "class", "button", "href", address);
      }
      content.close("li");
    }
    content.close("ul");
    content.element("p", state.records().folder().toString(), "class", "note");
    if (!all.isEmpty()) {
      content
          .open("p")
          .element("a", wording.word("Web.verifyAll"), "class", "button", "href", "/verify");
      content.close("p");
    }
    content.element("h2", wording.word("Web.takeIn"));
    content.add(
        new UploadMarkup(wording)
            .form("/take-in", wording.word("Web.takeInDrop"), initials(wording)));
    return Reply.page(200, new Frame(wording).page(wording.word("Web.records"), content));
  }

  private Markup initials(Wording wording) {
    Markup field = new Markup().open("div", "class", "field");
    EntryMarkup.initials(field, wording, state.initials(), true);
    return field.close("div");
  }

  /** Takes a packed record in: all of it, checked, or nothing. */
  Reply takeIn(Request request) throws BadInput, StoreFailure, IOException {
    Uploads.Upload zip = uploads.take(request, "");
    try {
      String by = request.field(EntryMarkup.BY).orElse("");
      String code = UnpackRecord.run(state.records(), zip.path(), by, new LocalFiles()).code();
      state.remember(by);
      return Reply.seeOther(state.base(code) + "/" + JobStep.ARRIVING.path());
    } finally {
      uploads.remove(zip);
    }
  }

  /** Every byte of every record against its sum. */
  Reply verify(Wording wording) throws BadInput, StoreFailure {
    Markup content = new Markup();
    for (ListRecords.Listed record : ListRecords.run(state.records())) {
      content.add(
          VerifiedMarkup.of(
              record.code(), VerifyRecord.run(state.records(), record.code()), wording));
    }
    content.open("p").element("a", wording.word("Web.records"), "class", "button", "href", "/");
    content.close("p");
    return Reply.page(200, new Frame(wording).page(wording.word("Web.verifyAll"), content));
  }

  /** The form that starts a record. */
  Reply form(Wording wording) {
    return form(200, new TypedForm(Map.of()), FieldFaults.NONE, wording);
  }

  private Reply form(int status, TypedForm typed, FieldFaults faults, Wording wording) {
    EntryMarkup form = new EntryMarkup(wording, typed, faults, state.initials());
    Markup content = form.begin("/new", "");
    form.own(content, CODE, wording.word("Web.code"), typed);
    form.fields(
        content,
        EntryForms.of(EntryKind.OPENING),
        RowOffers.of(SuggestedRows.none(wording)),
        EntryOffers.NONE);
    form.end(
        content,
        wording.word("Web.start"),
        new TypedTime.Offered(state.records().now(), Optional.empty()));
    return Reply.page(status, new Frame(wording).page(wording.word("Web.start"), content));
  }

  /** Starts a record, or shows the form again with what is wrong at its fields. */
  Reply start(Request request, Wording wording) throws StoreFailure {
    TypedForm typed = TypedForm.of(request);
    String code = request.field(CODE).orElse("");
    Optional<String> noTime = TypedTime.fault(typed, LocalTimes.here(wording));
    if (noTime.isPresent()) {
      return form(422, typed, FieldFaults.ofTime(noTime.get()), wording);
    }
    try {
      StartRecord.run(state.records(), code, draft(request, typed, wording));
      state.remember(request.field(EntryMarkup.BY).orElse(""));
      return Reply.seeOther(state.base(code) + "/" + JobStep.PARTS.path());
    } catch (BadInput e) {
      return form(422, typed, faults(e.problems(), wording), wording);
    }
  }

  private static FieldFaults faults(List<Problem> problems, Wording wording) {
    return FieldFaults.of(EntryForms.of(EntryKind.OPENING), problems, wording);
  }

  private static EntryDraft draft(Request request, TypedForm typed, Wording wording) {
    return new EntryDraft(
        EntryKind.OPENING,
        typed.given(EntryForms.of(EntryKind.OPENING), RowOffers.of(SuggestedRows.none(wording))),
        SuggestedRows.none(wording),
        List.of(),
        request.field(EntryMarkup.BY).orElse(""),
        TypedTime.of(typed, LocalTimes.here(wording)),
        Optional.empty(),
        request.field(EntryMarkup.SURE).isPresent());
  }
}
