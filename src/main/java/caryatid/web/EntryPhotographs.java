package caryatid.web;

import caryatid.entry.EntryKind;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.stand.FormPhotographs;
import caryatid.web.page.JobStep;
import caryatid.web.page.Markup;
import caryatid.web.page.PhotographMarkup;
import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import java.io.IOException;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The photographs of an entry's form: they wait with its draft until the entry is kept. */
final class EntryPhotographs {
  /** The part of the addresses under a step. */
  static final String PART = "photograph";

  /** Steps in which something is looked at. */
  private static final Set<EntryKind> SEEN =
      EnumSet.of(EntryKind.NOTE, EntryKind.ASSESSMENT, EntryKind.WALKING);

  private static final String NUMBER = "\\d{1,3}";
  private static final int JPEG_BEGINS = 0xFF;

  private final WindowState state;
  private final Uploads uploads;

  EntryPhotographs(WindowState state, Uploads uploads) {
    this.state = state;
    this.uploads = uploads;
  }

  static boolean isTaken(EntryKind kind) {
    return SEEN.contains(kind);
  }

  /** A photograph is sent, or one that waits is shown. */
  Reply answer(Request request, OpenRecord record, JobStep step)
      throws BadInput, StoreFailure, IOException {
    EntryKind kind = step.kinds().get(0);
    if (!isTaken(kind)) {
      return Pages.missing(record.wording());
    }
    FormPhotographs waiting = state.photographs(record.code(), kind);
    if (!request.changes()) {
      return shown(waiting, request.part(4), record);
    }
    Uploads.Upload sent = uploads.take(request.body(), request.field("name").orElse(""));
    try {
      List<String> faults = take(waiting, sent::bytes, record);
      return Reply.part(markup(record, step).inner(waiting.all(), faults));
    } finally {
      uploads.remove(sent);
    }
  }

  /** A file that may not be there. */
  private interface Sent {
    NamedBytes bytes() throws BadInput;
  }

  private static List<String> take(FormPhotographs waiting, Sent photograph, OpenRecord of)
      throws StoreFailure {
    try {
      waiting.take(photograph.bytes());
      return List.of();
    } catch (BadInput e) {
      return e.problems().stream().map(problem -> of.wording().say(problem)).toList();
    }
  }

  private static Reply shown(FormPhotographs waiting, String number, OpenRecord record)
      throws BadInput, StoreFailure {
    Optional<FormPhotographs.Waiting> found =
        number.matches(NUMBER) ? waiting.find(Integer.parseInt(number)) : Optional.empty();
    return found.isPresent()
        ? picture(found.get().picture().readAll())
        : Pages.missing(record.wording());
  }

  /** A picture as it is kept, JPEG or PNG: the first byte tells which (ISO/IEC 10918-1, SOI). */
  static Reply picture(byte[] bytes) {
    boolean jpeg = bytes.length > 0 && (bytes[0] & JPEG_BEGINS) == JPEG_BEGINS;
    return new Reply(200, jpeg ? "image/jpeg" : "image/png", bytes, Map.of());
  }

  private static PhotographMarkup markup(OpenRecord record, JobStep step) {
    return new PhotographMarkup(record.wording(), record.address(step) + "/" + PART);
  }

  /** The part of the form of a kind; nothing where it takes none. */
  Markup section(OpenRecord record, JobStep step, EntryKind kind) throws BadInput, StoreFailure {
    if (!isTaken(kind) || kind != step.kinds().get(0)) {
      return new Markup();
    }
    boolean open = kind != EntryKind.ASSESSMENT;
    return markup(record, step).section(state.photographs(record.code(), kind).all(), open);
  }

  /** Whether the form was sent only to take one away, or one by its path; what is wrong then. */
  Optional<List<String>> act(Request request, OpenRecord record, EntryKind kind)
      throws BadInput, StoreFailure {
    FormPhotographs waiting = state.photographs(record.code(), kind);
    Optional<String> remove = request.field(PhotographMarkup.REMOVE);
    Optional<String> path = request.field(PhotographMarkup.PATH);
    if (remove.isPresent() && remove.get().matches(NUMBER)) {
      waiting.remove(Integer.parseInt(remove.get()));
      return Optional.of(List.of());
    }
    return path.isPresent() && isTaken(kind)
        ? Optional.of(take(waiting, () -> PathField.read(path.get()), record))
        : Optional.empty();
  }
}
