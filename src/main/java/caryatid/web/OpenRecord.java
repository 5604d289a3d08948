package caryatid.web;

import caryatid.entry.EntryKind;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
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
import java.util.Set;

/**
 * A record as one request finds it.
 *
 * @param view what the record shows
 * @param head what of it is always in sight
 * @param base the address of its pages
 * @param drafted the steps with something typed and not kept
 * @param wording the reader's language
 */
record OpenRecord(
    RecordView view, RecordHead head, String base, Set<JobStep> drafted, Wording wording) {
  private static final String RECORD = "Web.record";

  OpenRecord {
    drafted = Set.copyOf(drafted);
  }

  static OpenRecord of(WindowState state, RecordView view, Wording wording)
      throws BadInput, StoreFailure {
    RecordHead head = RecordHead.of(view, wording);
    Set<JobStep> drafted = state.drafted(head.code());
    return new OpenRecord(view, head, state.base(head.code()), drafted, wording);
  }

  /** The same record as it is now. */
  OpenRecord again(WindowState state) throws BadInput, StoreFailure {
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

  /** The page of a step with its form. */
  Reply keeping(int status, JobStep step, Markup content) {
    Frame.Around around =
        new Frame.Around(Optional.of(step), drafted, Optional.of(after(step)), true);
    return Reply.page(
        status, new Frame(wording).page(head, base, around, wording.word(step.key()), content));
  }

  /**
   * The page of static alignment.
   *
   * @param now what is to be done on it next, before the next step
   */
  Reply standing(int status, Markup content, Markup now) {
    Frame.Around around =
        new Frame.Around(
            Optional.of(JobStep.STATIC), drafted, Optional.of(after(JobStep.STATIC)), false);
    String title = wording.word(JobStep.STATIC.key());
    return Reply.page(
        status, new Frame(wording).page(head, base, around, title, content, Optional.of(now)));
  }

  /** A page within the record's frame: a step leads to the next one, others to the record. */
  Reply page(int status, Optional<JobStep> step, String title, Markup content) {
    Frame.Onward onward = step.map(this::after).orElseGet(() -> toRecord(wording.word(RECORD)));
    Frame.Around around = new Frame.Around(step, drafted, Optional.of(onward), false);
    return Reply.page(status, new Frame(wording).page(head, base, around, title, content));
  }

  /** The page of the record itself, which leads nowhere. */
  Reply page(Markup content) {
    Frame.Around around = new Frame.Around(Optional.empty(), drafted, Optional.empty(), false);
    return Reply.page(
        200, new Frame(wording).page(head, base, around, wording.word(RECORD), content));
  }

  /** Nothing comes after a stand while it has to be repeated. */
  private Frame.Onward after(JobStep step) {
    Optional<JobStep> next = next(step);
    if (next.filter(later -> later.compareTo(JobStep.STATIC) <= 0).isEmpty() && standAgain()) {
      return new Frame.Onward(onward("Web.standAgain"), address(JobStep.STATIC));
    }
    return next.map(later -> new Frame.Onward(onward(later.key()), address(later)))
        .orElseGet(() -> toRecord(onward(RECORD)));
  }

  /** The alignment was changed since the last stand, or a line about safety has no answer. */
  private boolean standAgain() {
    return view.isChangedSinceStand()
        || head.unsafe().stream().anyMatch(line -> !line.answered() && line.stand().isPresent());
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
