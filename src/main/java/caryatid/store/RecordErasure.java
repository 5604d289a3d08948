package caryatid.store;

import caryatid.disk.DurableFiles;
import caryatid.disk.FilePermissions;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.Erasure;
import caryatid.fitting.Addition;
import caryatid.fitting.RecordCode;
import caryatid.fitting.RecordProblem;
import caryatid.format.EntryJson;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * Erases a record on request and leaves one entry in its place that says when, by whom and why. The
 * entry is written first, so that the next program to open the record finishes an interrupted
 * erasure. The record's lock must be held.
 */
final class RecordErasure {
  private static final String ERASURE = "erasure.json";
  private static final String OLD = "record";

  private final StoreFolder store;
  private final RecordCode code;

  RecordErasure(StoreFolder store, RecordCode code) {
    this.store = store;
    this.code = code;
  }

  /** Whether a record's folder is that of an erased one, by the name of its first entry. */
  static boolean isErased(Path object) {
    return Files.isDirectory(object.resolve("v1/content/0001-" + EntryKind.ERASURE.key()));
  }

  /** Whether an erasure was begun and not finished. */
  boolean isPending() {
    return Files.exists(store.erasing(code).resolve(ERASURE));
  }

  /**
   * Erases the record.
   *
   * @throws BadInput if it was erased before, in which case the first erasure stays, or the entry
   *     could not be read again
   */
  void erase(Entry erasure) throws IOException, BadInput, StoreFailure {
    if (isErased(store.record(code))) {
      throw new BadInput(Problem.at(Place.of(code.text()), RecordProblem.WAS_ERASED));
    }
    byte[] json = EntryJson.kept(erasure);
    FilePermissions.createStoreFolder(store.erasing(code));
    DurableFiles.replace(store.erasing(code).resolve(ERASURE), json, store.replacing());
    finish();
  }

  /** Does what is left to do. Doing it twice does no harm. */
  void finish() throws IOException, BadInput, StoreFailure {
    Path old = store.erasing(code).resolve(OLD);
    Entry erasure =
        EntryJson.own(Files.readAllBytes(store.erasing(code).resolve(ERASURE)), ERASURE);
    // An erasure whose entry was begun and not finished starts again.
    CrashRecovery.recover(store.record(code), store.replacing());
    if (!Files.exists(old) && Files.exists(store.record(code))) {
      DurableFiles.move(store.record(code), old, StandardCopyOption.ATOMIC_MOVE);
      DurableFiles.syncFolder(store.records());
    }
    if (!Files.exists(store.record(code))) {
      try (StagingArea staging = new StagingArea(store, code)) {
        staging.writer().add(1, addition(erasure));
      }
    }
    DurableFiles.delete(old);
    DurableFiles.delete(store.erasing(code));
  }

  /** The one entry that is left of a record. */
  static Entry entry(OffsetDateTime at, String by, String why, int entries) {
    return new Entry(1, at, by, Optional.empty(), new Erasure(why, entries), List.of());
  }

  private static Addition addition(Entry erasure) {
    return new Addition(
        erasure.at(), erasure.by(), erasure.corrects(), erasure.content(), List.of());
  }
}
