package caryatid.web;

import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.EraseRecord;
import caryatid.web.page.EntryMarkup;
import caryatid.web.page.FieldFaults;
import caryatid.web.page.Markup;
import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import caryatid.web.page.TypedForm;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Erases a record on request: for good, so its code is typed once more. */
final class ErasePage {
  private static final String WHY = "erase-why";
  private static final String CODE = "erase-code";

  private final WindowState state;

  ErasePage(WindowState state) {
    this.state = state;
  }

  /** The form, or, when it was sent, what became of it. */
  Reply answer(Request request, OpenRecord record) throws StoreFailure {
    Wording wording = record.wording();
    if (!request.changes()) {
      return form(200, record, new TypedForm(Map.of()), FieldFaults.NONE);
    }
    TypedForm typed = TypedForm.of(request);
    if (!request.field(CODE).equals(Optional.of(record.code()))) {
      List<String> said = List.of(wording.word("Web.eraseOtherCode"));
      return form(422, record, typed, new FieldFaults(Map.of(), said));
    }
    if (request.field(WHY).isEmpty()) {
      List<String> said = List.of(wording.word("Web.eraseNoReason"));
      return form(422, record, typed, new FieldFaults(Map.of(), said));
    }
    try {
      EraseRecord.run(state.records(), record.code(), reason(request));
      state.forget(record.code());
      return Reply.seeOther("/");
    } catch (BadInput e) {
      List<String> said = e.problems().stream().map(wording::sayWithin).toList();
      return form(422, record, typed, new FieldFaults(Map.of(), said));
    }
  }

  private static EraseRecord.ErasureReason reason(Request request) {
    return new EraseRecord.ErasureReason(
        Optional.empty(),
        request.field(EntryMarkup.BY).orElse(""),
        request.field(WHY).orElse(""),
        request.field(EntryMarkup.SURE).isPresent());
  }

  private Reply form(int status, OpenRecord record, TypedForm typed, FieldFaults faults) {
    Wording wording = record.wording();
    EntryMarkup form = new EntryMarkup(wording, typed, faults, state.initials());
    Markup content = new Markup().element("p", wording.word("Web.eraseMore"), "class", "danger");
    content.add(form.begin(record.base() + "/erase", ""));
    form.own(content, CODE, wording.word("Web.eraseCode"), typed);
    form.own(content, WHY, wording.word("Web.eraseWhy"), typed);
    form.confirm(content);
    form.close(content, wording.word("Web.erase"));
    return record.page(status, Optional.empty(), wording.word("Web.erase"), content);
  }
}
