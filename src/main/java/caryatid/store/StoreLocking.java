package caryatid.store;

import caryatid.disk.FilePermissions;
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
 * Locks a record and finishes interrupted work before the next operation.
 *
 * @param folder where the records lie
 * @param patience how long to wait while another program holds a lock
 */
record StoreLocking(StoreFolder folder, Duration patience) {

  /** Runs work on the store while holding its lock. */
  <T> T overAll(String by, RecordLock.Work<T> work) throws BadInput, StoreFailure {
    return locked(folder.lock(), by, work);
  }

  /** Runs work on a record while holding its lock, after finishing what was interrupted. */
  <T> T over(RecordCode code, String by, RecordLock.Work<T> work) throws BadInput, StoreFailure {
    return locked(
        folder.lock(code),
        by,
        () -> {
          if (erasure(code).isPending()) {
            erasure(code).finish();
          }
          CrashRecovery.recover(folder.record(code), folder.replacing());
          return work.run();
        });
  }

  private <T> T locked(Path lock, String by, RecordLock.Work<T> work)
      throws BadInput, StoreFailure {
    try {
      FilePermissions.makeFolder(folder.folder());
      return RecordLock.holding(lock, by, patience, work);
    } catch (IOException e) {
      throw failure(folder.folder(), StoreProblem.CANNOT_WRITE, e);
    }
  }

  /** Whether nothing about a record was interrupted: no erasure, no version that is not listed. */
  boolean isRecovered(FittingRecord record) {
    return record.damage().isEmpty()
        && !erasure(record.code()).isPending()
        && !Files.exists(folder.record(record.code()).resolve("v" + (record.size() + 1)));
  }

  /** Finishes interrupted work, unless the record is in use or cannot be written. */
  void recoverIfPossible(RecordCode code) {
    try {
      over(code, "reader", () -> 0);
    } catch (BadInput | StoreFailure inUseOrNotWritable) {
      // Its undamaged entries can be read all the same.
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
    return hasVersion(code.text()) || erasure(code).isPending();
  }

  /** Not so a folder in which a start got no further than the declaration. */
  private boolean hasVersion(String code) {
    return Files.isDirectory(folder.records().resolve(code).resolve("v1"));
  }

  void requireStarted(RecordCode code) throws BadInput {
    if (!Files.notExists(folder.records()) && !Files.isExecutable(folder.records())) {
      throw new BadInput(
          Problem.at(
              Place.of(folder.records().toString()),
              StoreProblem.CANNOT_READ,
              Argument.text("permission denied")));
    }
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
        boolean erased = RecordErasure.isErased(folder.records().resolve(other));
        throw new BadInput(
            Problem.at(
                Place.of(other), erased ? StoreProblem.ERASED_EXISTS : StoreProblem.RECORD_EXISTS));
      }
    }
  }

  ObjectFiles files(RecordCode code) {
    return new ObjectFiles(new DurableStorage(folder.records(), folder.replacing()), code);
  }

  RecordErasure erasure(RecordCode code) {
    return new RecordErasure(folder, code);
  }

  static StoreFailure failure(Path place, StoreProblem what, IOException e) {
    return new StoreFailure(
        Problem.at(Place.of(place.toString()), what, Argument.text(FailureReason.of(e))));
  }
}
