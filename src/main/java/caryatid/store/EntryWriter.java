package caryatid.store;

import caryatid.entry.Entry;
import caryatid.fitting.Addition;
import caryatid.fitting.ContentCheck;
import caryatid.fitting.CorrectionCheck;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.fitting.WritableCheck;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Optional;

/** Adds entries to a record whose lock is held. */
final class EntryWriter {
  private final StoreLocking locking;
  private final StoreContents contents;
  private final RecordCode code;

  EntryWriter(StoreLocking locking, RecordCode code) {
    this.locking = locking;
    this.contents = new StoreContents(locking.folder());
    this.code = code;
  }

  Entry add(Addition addition) throws BadInput, StoreFailure, IOException {
    try (StagingArea staging = new StagingArea(locking.folder(), code)) {
      Optional<FittingRecord> read = staging.read(contents.files(code));
      FittingRecord record = read.isPresent() ? read.get() : readAnyhow().record();
      WritableCheck.require(record);
      CorrectionCheck.check(record, addition);
      ContentCheck.check(record, addition);
      DuplicateStandCheck.require(record, addition);
      return write(staging, record.size() + 1, addition);
    }
  }

  Entry start(Addition opening) throws BadInput, StoreFailure, IOException {
    try (StagingArea staging = new StagingArea(locking.folder(), code)) {
      ContentCheck.check(code, opening);
      return write(staging, 1, opening);
    }
  }

  private Entry write(StagingArea staging, int number, Addition addition)
      throws BadInput, StoreFailure {
    try {
      Entry entry = staging.writer().add(number, addition);
      requireReadBack(entry);
      return entry;
    } catch (StoreFailure e) {
      throw afterwards(number, e);
    }
  }

  /** Added is what can be read again, by its inventory and with its sum. */
  private void requireReadBack(Entry entry) throws StoreFailure {
    ObjectFiles files = contents.files(code);
    String path = entry.folder() + "/" + Entry.FILE;
    try {
      Inventory inventory = files.inventory("").inventory();
      String digest = inventory.files().getOrDefault(path, "");
      String there = inventory.contents().getOrDefault(digest, path);
      boolean same = Digests.of(Digests.SHA_512, files.bytes(there)).equals(digest);
      if (same && inventory.head() == entry.number()) {
        return;
      }
    } catch (IOException e) {
      // Said below.
    }
    throw new StoreFailure(
        Problem.at(
            Place.of(code.text()),
            StoreProblem.CANNOT_WRITE,
            Argument.term(FailureReason.NOT_READ_BACK)));
  }

  /**
   * What to say of an addition that failed: nothing of it is left, or all of it is there after all.
   */
  private StoreFailure afterwards(int number, StoreFailure failure) {
    try {
      CrashRecovery.recover(locking.folder().record(code), locking.folder().replacing());
    } catch (IOException leftForTheNextOne) {
      // The same disk fails again; whoever opens the record next settles it.
    }
    // A version in its place is an addition, listed or not: the next one who opens it lists it.
    boolean there = Files.isDirectory(locking.folder().record(code).resolve("v" + number));
    Argument[] reason = failure.problems().get(0).arguments().toArray(new Argument[0]);
    return there
        ? new StoreFailure(Problem.at(Place.of(code.text()), StoreProblem.WRITTEN_BUT, reason))
        : failure;
  }

  /** The record, however much of it is damaged. */
  StoredRecord readAnyhow() throws BadInput {
    contents.requireStarted(code);
    return RecordReader.read(contents.files(code))
        .orElseThrow(() -> new BadInput(Problem.at(Place.of(code.text()), StoreProblem.DAMAGED)));
  }
}
