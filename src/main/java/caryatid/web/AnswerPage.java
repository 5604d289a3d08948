package caryatid.web;

import caryatid.entry.EntryKind;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.web.page.FieldFaults;
import caryatid.web.page.JobStep;
import caryatid.web.page.Markup;
import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import caryatid.web.page.TypedForm;
import caryatid.wording.RecordHead;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The answer to something unsafe, which stays in sight and is never removed. */
final class AnswerPage {
  private AnswerPage() {}

  /** The form that takes something unsafe as it is, with the reason. */
  static Reply of(Request request, OpenRecord record, EntryPage entry)
      throws BadInput, StoreFailure {
    TypedForm said = new TypedForm(said(request, record.head().unsafe()));
    Markup form =
        entry
            .form()
            .form(
                record,
                JobStep.CLOSING,
                EntryKind.ACCEPTED,
                new StepForm.Again(said, FieldFaults.NONE, List.of()));
    return record.page(200, Optional.empty(), record.wording().word("Web.answer"), form);
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
}
