package caryatid.store;

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
 * Erases a whole record on request and leaves a stone in its place that says when, by whom and why.
 * What is to be done is written down first, so that an erasure that was interrupted is finished by
 * whoever comes next. The record's lock must be held.
 */
final class Erasing {
  private static final String STONE = "erasure.json";
  private static final String OLD = "record";

  private final StoreFolder store;
  private final RecordCode code;

  Erasing(StoreFolder store, RecordCode code) {
    this.store = store;
    this.code = code;
  }

  /** Whether a record's folder is that of an erased one, by the name of its first entry. */
  static boolean isStone(Path object) {
    return Files.isDirectory(object.resolve("v1/content/0001-" + EntryKind.ERASURE.key()));
  }

  /** Whether an erasure was begun and not finished. */
  boolean isPending() {
    return Files.exists(store.erasing(code).resolve(STONE));
  }

  /**
   * Erases the record.
   *
   * @throws BadInput if it was erased before, in which case the first stone stays, or the stone
   *     says nothing that could be read again
   */
  void erase(Entry stone) throws IOException, BadInput, StoreFailure {
    if (isStone(store.record(code))) {
      throw new BadInput(Problem.at(Place.of(code.text()), RecordProblem.WAS_ERASED));
    }
    byte[] json = EntryJson.kept(stone);
    Files.createDirectories(store.erasing(code));
    Durable.replace(store.erasing(code).resolve(STONE), json, store.replacing());
    finish();
  }

  /** Does what is left to do. Doing it twice does no harm. */
  void finish() throws IOException, BadInput, StoreFailure {
    Path old = store.erasing(code).resolve(OLD);
    Entry stone = EntryJson.own(Files.readAllBytes(store.erasing(code).resolve(STONE)), STONE);
    // A stone that was begun and not finished is none.
    Settling.settle(store.record(code), store.replacing());
    if (!Files.exists(old) && Files.exists(store.record(code))) {
      Files.move(store.record(code), old, StandardCopyOption.ATOMIC_MOVE);
      Durable.syncFolder(store.records());
    }
    if (!Files.exists(store.record(code))) {
      try (Workplace work = new Workplace(store, code)) {
        work.adding().add(1, addition(stone));
      }
    }
    Durable.delete(old);
    Durable.delete(store.erasing(code));
  }

  /** What is left of a record. */
  static Entry stone(OffsetDateTime at, String by, String why, int entries) {
    return new Entry(1, at, by, Optional.empty(), new Erasure(why, entries), List.of());
  }

  private static Addition addition(Entry stone) {
    return new Addition(stone.at(), stone.by(), stone.corrects(), stone.content(), List.of());
  }
}
