package caryatid.web;

import caryatid.entry.EntryKind;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.AddedEntry;
import caryatid.usecase.Records;
import caryatid.usecase.ShowRecord;
import caryatid.usecase.stand.FormDraft;
import caryatid.usecase.stand.FormPhotographs;
import caryatid.usecase.stand.FoundBefore;
import caryatid.usecase.stand.StandDraft;
import caryatid.usecase.stand.WatchedFolder;
import caryatid.web.page.JobStep;
import caryatid.web.page.TypedTime;
import java.io.IOException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What a window remembers between requests: drafts, watched folders, and the records by the random
 * handles that stand in addresses. A browser keeps addresses, so no wearer's code stands in one.
 */
final class WindowState {
  private static final int HANDLE_BYTES = 6;

  private final Records records;
  private final Map<String, String> handles = new ConcurrentHashMap<>();
  private final Map<String, String> codes = new ConcurrentHashMap<>();
  private final Map<String, WatchedFolder> watched = new ConcurrentHashMap<>();
  private final Map<String, FormDraft> forms = new ConcurrentHashMap<>();
  private final Map<String, FormPhotographs> photographs = new ConcurrentHashMap<>();
  private final Map<String, StandDraft> drafts = new ConcurrentHashMap<>();
  private final FoundBefore before = new FoundBefore();
  private final Map<String, Integer> kept = new ConcurrentHashMap<>();
  private final SecureRandom random = new SecureRandom();
  private final Map<String, StoodOn> stood = new ConcurrentHashMap<>();
  private final Map<String, TimeTyped> times = new ConcurrentHashMap<>();
  private volatile String initials = "";
  private volatile Optional<String> standing = Optional.empty();

  WindowState(Records records) {
    this.records = records;
  }

  Records records() {
    return records;
  }

  /** The address of a record's pages. */
  String base(String code) {
    return "/r/" + handles.computeIfAbsent(code, this::handle);
  }

  private String handle(String code) {
    byte[] bytes = new byte[HANDLE_BYTES];
    random.nextBytes(bytes);
    String handle = HexFormat.of().formatHex(bytes);
    codes.put(handle, code);
    return handle;
  }

  /** The record of a handle that this window gave. */
  Optional<String> code(String handle) {
    return Optional.ofNullable(codes.get(handle));
  }

  /** The draft of a record's next stand: one for all pages, so that they do not write at once. */
  StandDraft draft(String code) throws BadInput {
    StandDraft made = StandDraft.of(records, code, before);
    return Optional.ofNullable(drafts.putIfAbsent(code, made)).orElse(made);
  }

  /** The stand of a record is shown: plates are described for it. */
  void showStand(String code) {
    standing = Optional.of(code);
  }

  /** The record whose stand was shown last; empty before the first. */
  Optional<String> standing() {
    return standing;
  }

  /** Nothing that was typed for a record stays: it was erased. */
  void forget(String code) {
    Optional.ofNullable(drafts.remove(code)).ifPresent(StandDraft::forget);
    forms.keySet().removeIf(key -> key.startsWith(code + "/"));
    photographs.keySet().removeIf(key -> key.startsWith(code + "/"));
    stood.remove(code);
    times.remove(code);
    standing = standing.filter(other -> !other.equals(code));
    stopWatching(code);
  }

  /** The draft of a form of a record: one for all pages as well. */
  FormDraft draft(String code, EntryKind kind) throws BadInput {
    return draft(code, kind.key());
  }

  /** The draft of a form that is not a step's. */
  FormDraft draft(String code, String form) throws BadInput {
    FormDraft made = FormDraft.of(records, code, form);
    return Optional.ofNullable(forms.putIfAbsent(code + "/" + form, made)).orElse(made);
  }

  /** The photographs that wait with it. */
  FormPhotographs photographs(String code, EntryKind kind) throws BadInput {
    FormPhotographs made = FormPhotographs.of(records, code, kind);
    return Optional.ofNullable(photographs.putIfAbsent(code + "/" + kind.key(), made)).orElse(made);
  }

  /** The steps with something typed and not kept. */
  Set<JobStep> drafted(String code) throws BadInput, StoreFailure {
    Set<JobStep> drafted = EnumSet.noneOf(JobStep.class);
    for (JobStep step : JobStep.values()) {
      for (EntryKind kind : step.kinds()) {
        boolean typed =
            kind == EntryKind.STAND ? draft(code).isBegun() : draft(code, kind).isBegun();
        if (typed || !photographs(code, kind).all().isEmpty()) {
          drafted.add(step);
        }
      }
    }
    return drafted;
  }

  /** A form was kept; what its page still sends by itself is no new draft. */
  void keep(String code, String form, String head, AddedEntry as) {
    kept.put(code + "/" + form + "/" + head, as.entry().number());
  }

  /** The entry that a form of a page was kept as; empty if it was not. */
  OptionalInt keptAs(String code, String form, String head) {
    return Optional.ofNullable(kept.get(code + "/" + form + "/" + head)).stream()
        .mapToInt(Integer::intValue)
        .findFirst();
  }

  /**
   * Saves what is typed into a form, though the record may have changed since the form was made;
   * not if the form was kept meanwhile, because it would be offered again.
   */
  void saveDraft(String code, String form, String head, Map<String, String> typed)
      throws BadInput, StoreFailure {
    if (!kept.containsKey(code + "/" + form + "/" + head)) {
      draft(code, form).type(typed);
    }
  }

  /** How long a wearer stood on a day, by a record as it was. */
  private record StoodOn(String head, LocalDate day, double seconds) {}

  /**
   * How long the wearer stood today in the stands that are kept, s; read again only when the record
   * has changed.
   */
  double stoodTodayS(String code, String head) throws BadInput {
    LocalDate today = records.now().toLocalDate();
    StoodOn known = stood.get(code);
    if (known == null || !known.head().equals(head) || !known.day().equals(today)) {
      known = new StoodOn(head, today, ShowRecord.stoodS(records, code, today));
      stood.put(code, known);
    }
    return known.seconds();
  }

  /** The folder that is watched for a record's next stand; empty where none is. */
  Optional<WatchedFolder> watched(String code) {
    return Optional.ofNullable(watched.get(code));
  }

  /** Watches a folder from now on; files that are there already are not new. */
  void watch(String code, Path folder) throws IOException {
    watched.put(code, WatchedFolder.of(folder));
  }

  void stopWatching(String code) {
    watched.remove(code);
  }

  /** The initials that were typed last, to be offered again. */
  String initials() {
    return initials;
  }

  void remember(String by) {
    initials = by;
  }

  /** A time that was typed, and the day on which it was. */
  private record TimeTyped(String text, LocalDate on) {}

  /** What is offered as the time of an entry: now, or what was typed last, today. */
  TypedTime.Offered time(String code) {
    OffsetDateTime now = records.now();
    return new TypedTime.Offered(
        now,
        Optional.ofNullable(times.get(code))
            .filter(typed -> typed.on().equals(now.toLocalDate()))
            .map(TimeTyped::text));
  }

  /** The time that was typed for what was kept; where none was, none is offered any longer. */
  void remember(String code, Optional<String> time) {
    times.remove(code);
    time.ifPresent(text -> times.put(code, new TimeTyped(text, records.now().toLocalDate())));
  }
}
