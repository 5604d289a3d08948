package caryatid.web;

import caryatid.entry.EntryKind;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.ShowRecord;
import caryatid.views.RecordView;
import caryatid.web.page.JobStep;
import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import caryatid.wording.Wording;
import java.io.IOException;
import java.util.Optional;

/** The pages of one record. */
final class RecordPages {
  private final WindowState state;
  private final EntryPage entry;
  private final ShowPage show;
  private final StaticPage stand;
  private final RecordFiles files;
  private final BundlePage bundle;
  private final ErasePage erase;
  private final ChangePage change;
  private final CorrectPage correct;
  private final EntryPhotographs photographs;

  RecordPages(WindowState state, Uploads uploads) {
    this.state = state;
    this.photographs = new EntryPhotographs(state, uploads);
    this.entry = new EntryPage(state, photographs);
    this.show = new ShowPage(state, entry.form());
    this.stand = new StaticPage(state);
    this.change = new ChangePage(state);
    this.correct = new CorrectPage(state);
    this.erase = new ErasePage(state);
    this.files = new RecordFiles(state, uploads);
    this.bundle = new BundlePage(state, uploads);
  }

  /** Answers a request whose address names a record by its handle. */
  Reply answer(Request request, Wording wording) throws BadInput, StoreFailure, IOException {
    Optional<String> code = state.code(request.part(1));
    if (code.isEmpty()) {
      return Pages.missing(wording);
    }
    RecordView view = ShowRecord.run(state.records(), code.get());
    OpenRecord record = OpenRecord.of(state, view, wording);
    Optional<JobStep> step = JobStep.of(request.part(2));
    boolean erasedOrDamaged = !record.head().kinds().contains(EntryKind.OPENING);
    if (erasedOrDamaged && (request.changes() || step.equals(Optional.of(JobStep.STATIC)))) {
      return Pages.missing(wording);
    }
    if (step.isPresent()) {
      return step(request, record, step.get());
    }
    return switch (request.part(2)) {
      case "record" -> show.timeline(record);
      case "report" -> show.report(record, request.part(3));
      case "file" -> show.file(record, request.part(3), request.field("name").orElse(""));
      case "back" -> change.back(request, record);
      case "picture" -> show.picture(record, request.part(3), request.field("name").orElse(""));
      case "correct" -> correct.answer(request, record);
      case "change" -> change.change(request, record);
      case "answer" -> AnswerPage.of(request, record, state, entry.form());
      case "pdf" -> files.report(request, record);
      case "bundle" -> bundle.answer(request, record);
      case "pack" -> files.pack(record);
      case "verify" -> files.verify(record);
      case "erase" -> erase.answer(request, record);
      case "compare" -> files.compare(request, record);
      default -> Pages.missing(wording);
    };
  }

  private Reply step(Request request, OpenRecord record, JobStep step)
      throws BadInput, StoreFailure, IOException {
    if (request.part(3).equals(EntryPhotographs.PART)) {
      return photographs.answer(request, record, step);
    }
    if (step == JobStep.ARRIVING && !request.changes()) {
      return show.arriving(record);
    }
    return step == JobStep.STATIC
        ? stand.answer(request, record)
        : entry.answer(request, record, step);
  }
}
