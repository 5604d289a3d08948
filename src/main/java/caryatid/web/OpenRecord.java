package caryatid.web;

import caryatid.entry.EntryKind;
import caryatid.remark.Argument;
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
import java.util.Arrays;
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
  private static final String RECORD = "Web.record";

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

  /** A page within the record's frame: a step leads to the next one, others to the record. */
  Reply page(int status, Optional<JobStep> step, String title, Markup content) {
    Frame.Onward onward = step.map(this::after).orElseGet(() -> toRecord(wording.word(RECORD)));
    return Reply.page(
        status, new Frame(wording).page(head, base, step, Optional.of(onward), title, content));
  }

  /** The page of the record itself, which leads nowhere. */
  Reply page(Markup content) {
    return Reply.page(
        200,
        new Frame(wording)
            .page(head, base, Optional.empty(), Optional.empty(), wording.word(RECORD), content));
  }

  private Frame.Onward after(JobStep step) {
    return next(step)
        .map(next -> new Frame.Onward(onward(next.key()), address(next)))
        .orElseGet(() -> toRecord(onward(RECORD)));
  }

  private String onward(String key) {
    return wording.fill("Web.next", Argument.text(wording.word(key)));
  }

  private Frame.Onward toRecord(String words) {
    return new Frame.Onward(words, base + "/record");
  }

  /** The first step of which nothing is kept: of all on arriving, else of those that follow. */
  private Optional<JobStep> next(JobStep step) {
    if (step == JobStep.ARRIVING) {
      return NextStep.of(view).flatMap((EntryKind kind) -> JobStep.adding(kind));
    }
    return Arrays.stream(JobStep.values())
        .filter(later -> later.compareTo(step) > 0)
        .filter(later -> !head.kinds().contains(later.kinds().get(0)))
        .findFirst();
  }
}
