package caryatid.store;

import caryatid.disk.FilePermissions;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;

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
      FilePermissions.createPrivateFolder(folder.folder());
      return RecordLock.holding(lock, by, patience, work);
    } catch (IOException e) {
      throw FailureReason.failure(folder.folder(), StoreProblem.CANNOT_WRITE, e);
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

  RecordErasure erasure(RecordCode code) {
    return new RecordErasure(folder, code);
  }
}
