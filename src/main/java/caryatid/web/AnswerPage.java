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
import java.util.regex.Pattern;

/** The answer to something unsafe, which stays in sight and is never removed. */
final class AnswerPage {
  /** Names of drafts of answers, each by the line that it answers. */
  static final Pattern NAME = Pattern.compile("answer-[0-9a-f]{1,8}");

  private AnswerPage() {}

  /** The form that takes something unsafe as it is, with the reason. */
  static Reply of(Request request, OpenRecord record, WindowState state, StepForm form)
      throws BadInput, StoreFailure {
    Map<String, String> said = said(request, record.head().unsafe());
    Map<String, String> drafted =
        said.containsKey(StepForm.DRAFT)
            ? state.draft(record.code(), said.get(StepForm.DRAFT)).fields()
            : Map.of();
    TypedForm typed = new TypedForm(drafted.isEmpty() ? said : drafted);
    Markup content =
        form.form(
            record,
            JobStep.CLOSING,
            EntryKind.ACCEPTED,
            new StepForm.Again(typed, FieldFaults.NONE, List.of()));
    return record.page(200, Optional.empty(), record.wording().word("Web.answer"), content);
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
    texts.put(StepForm.DRAFT, "answer-" + Integer.toHexString(line.words().hashCode()));
    return texts;
  }
}
