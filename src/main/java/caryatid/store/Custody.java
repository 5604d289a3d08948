package caryatid.store;

import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;

/**
 * Who may do what when: locks, and what was interrupted settled before anything else is done.
 *
 * @param folder where the records lie
 * @param patience how long to wait for somebody else
 */
record Custody(StoreFolder folder, Duration patience) {

  /** Does something to the store as a whole, one at a time. */
  <T> T overAll(String by, RecordLock.Work<T> work) throws BadInput, StoreFailure {
    return locked(folder.lock(), by, work);
  }

  /** Does something to a record, one at a time, with what was interrupted before settled. */
  <T> T over(RecordCode code, String by, RecordLock.Work<T> work) throws BadInput, StoreFailure {
    return locked(
        folder.lock(code),
        by,
        () -> {
          if (erasing(code).isPending()) {
            erasing(code).finish();
          }
          Settling.settle(folder.record(code), folder.replacing());
          return work.run();
        });
  }

  private <T> T locked(Path lock, String by, RecordLock.Work<T> work)
      throws BadInput, StoreFailure {
    try {
      return RecordLock.holding(lock, by, patience, work);
    } catch (IOException e) {
      throw failure(folder.folder(), StoreProblem.CANNOT_WRITE, e);
    }
  }

  /** Whether nothing about a record was interrupted: no erasure, no version that is not listed. */
  boolean isSettled(FittingRecord record) {
    return record.damage().isEmpty()
        && !erasing(record.code()).isPending()
        && !Files.exists(folder.record(record.code()).resolve("v" + (record.size() + 1)));
  }

  /** Settles a record unless it is in use or cannot be written; then it is shown as it is. */
  void settleIfPossible(RecordCode code) {
    try {
      over(code, "reader", () -> 0);
    } catch (BadInput | StoreFailure inUseOrNotWritable) {
      // What is whole is whole all the same.
    }
  }

  List<String> codes() throws IOException {
    return Stream.concat(
            folder.names(folder.records()).stream().filter(this::hasVersion),
            folder.names(folder.erasing()).stream())
        .filter(RecordCode::isCode)
        .distinct()
        .sorted()
        .toList();
  }

  boolean isStarted(RecordCode code) {
    return hasVersion(code.text()) || erasing(code).isPending();
  }

  /** Not so a folder in which a start got no further than the declaration. */
  private boolean hasVersion(String code) {
    return Files.isDirectory(folder.records().resolve(code).resolve("v1"));
  }

  void requireStarted(RecordCode code) throws BadInput {
    if (!isStarted(code)) {
      throw new BadInput(
          Problem.at(
              Place.of(code.text()),
              StoreProblem.NO_SUCH_RECORD,
              Argument.text(folder.folder().toString())));
    }
  }

  /**
   * Requires that a code is not taken, in whatever case its letters are: some file systems take
   * both for one.
   */
  void requireFree(RecordCode code) throws BadInput, IOException {
    for (String other : codes()) {
      if (other.equalsIgnoreCase(code.text())) {
        throw new BadInput(Problem.at(Place.of(other), StoreProblem.RECORD_EXISTS));
      }
    }
  }

  ObjectFiles files(RecordCode code) {
    return new ObjectFiles(new DurableStorage(folder.records(), folder.replacing()), code);
  }

  Erasing erasing(RecordCode code) {
    return new Erasing(folder, code);
  }

  static StoreFailure failure(Path place, StoreProblem what, IOException e) {
    return new StoreFailure(
        Problem.at(Place.of(place.toString()), what, Argument.text(Reason.of(e))));
  }
}
