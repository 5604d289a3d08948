package caryatid.web;

import caryatid.entry.EntryKind;
import caryatid.remark.BadInput;
import caryatid.usecase.NextStep;
import caryatid.usecase.ShowRecord;
import caryatid.views.RecordView;
import caryatid.web.page.Frame;
import caryatid.web.page.JobStep;
import caryatid.web.page.Markup;
import caryatid.web.page.Reply;
import caryatid.wording.RecordHead;
import caryatid.wording.Wording;
import java.util.Optional;

/**
 * A record as one request finds it.
 *
 * @param view what the record shows
 * @param head what of it is always in sight
 * @param base the address of its pages
 * @param wording the reader's language
 */
record OpenRecord(RecordView view, RecordHead head, String base, Wording wording) {

  static OpenRecord of(WindowState state, RecordView view, Wording wording) {
    RecordHead head = RecordHead.of(view, wording);
    return new OpenRecord(view, head, state.base(head.code()), wording);
  }

  /** The same record as it is now. */
  OpenRecord again(WindowState state) throws BadInput {
    return of(state, ShowRecord.run(state.records(), code()), wording);
  }

  String code() {
    return head.code();
  }

  String address(JobStep step) {
    return base + "/" + step.path();
  }

  /** The page of a step. */
  Reply page(int status, JobStep step, Markup content) {
    return page(status, Optional.of(step), wording.word(step.key()), content);
  }

  /** A page within the record's frame. */
  Reply page(int status, Optional<JobStep> step, String title, Markup content) {
    Optional<JobStep> next = NextStep.of(view).flatMap((EntryKind kind) -> JobStep.adding(kind));
    return Reply.page(status, new Frame(wording).page(head, base, step, next, title, content));
  }
}
