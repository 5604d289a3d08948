package caryatid.web;

import caryatid.exchange.BundleRecord;
import caryatid.exchange.PatientIdentifier;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.file.LocalFiles;
import caryatid.usecase.file.Output;
import caryatid.web.page.EntryMarkup;
import caryatid.web.page.FieldFaults;
import caryatid.web.page.Markup;
import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import caryatid.web.page.TypedForm;
import caryatid.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A record as a file for the clinic's record system: who the wearer is there is asked first. */
final class BundlePage {
  static final String SYSTEM = "patient-system";
  static final String NUMBER = "patient-number";

  private final WindowState state;
  private final Uploads uploads;

  BundlePage(WindowState state, Uploads uploads) {
    this.state = state;
    this.uploads = uploads;
  }

  /** The form, or the file to be saved. Nothing is sent anywhere. */
  Reply answer(Request request, OpenRecord record) throws BadInput, StoreFailure, IOException {
    TypedForm typed = TypedForm.of(request);
    if (!request.changes()) {
      return page(200, record, typed, List.of());
    }
    Optional<PatientIdentifier> patient = patient(request);
    return patient.isEmpty()
        ? page(422, record, typed, List.of(record.wording().word("Web.bundle.bad")))
        : made(record, patient.get());
  }

  private static Optional<PatientIdentifier> patient(Request request) {
    try {
      return Optional.of(
          PatientIdentifier.of(
              request.field(SYSTEM).orElse("").strip()
                  + "|"
                  + request.field(NUMBER).orElse("").strip()));
    } catch (BadInput e) {
      return Optional.empty();
    }
  }

  private Reply made(OpenRecord record, PatientIdentifier patient)
      throws BadInput, StoreFailure, IOException {
    Path made = uploads.free();
    try {
      BundleRecord.write(
          state.records(),
          record.code(),
          patient,
          record.wording(),
          new Output(made, false),
          new LocalFiles());
      return Reply.download(record.code() + ".json", "application/fhir+json", made);
    } catch (BadInput | StoreFailure | RuntimeException e) {
      Files.deleteIfExists(made);
      throw e;
    }
  }

  private static Reply page(int status, OpenRecord record, TypedForm typed, List<String> faults) {
    Wording wording = record.wording();
    EntryMarkup form = new EntryMarkup(wording, typed, FieldFaults.NONE, "");
    Markup content = new Markup().element("p", wording.word("Web.bundle.what"));
    content.element("p", wording.word("Web.bundle.care"), "class", "danger");
    content.add(form.begin(record.base() + "/bundle", ""));
    if (!faults.isEmpty()) {
      content.open("div", "class", "fault", "role", "alert", "id", "faults", "tabindex", "-1");
      faults.forEach(fault -> content.element("p", fault));
      content.close("div");
    }
    form.own(content, SYSTEM, wording.word("Web.bundle.system"), typed);
    content.element("p", wording.word("Web.bundle.systemHint"), "class", "note");
    form.own(content, NUMBER, wording.word("Web.bundle.number"), typed);
    content.element("p", wording.word("Web.bundle.numberHint"), "class", "note");
    content.open("p").element("button", wording.word("Web.bundle.save"), "class", "strong");
    content.close("p").close("form");
    return record.page(status, Optional.empty(), wording.word("Web.bundle.title"), content);
  }
}
