package caryatid.usecase;

import caryatid.disk.DurableFiles;
import caryatid.disk.FilePermissions;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.store.NetworkDrive;
import caryatid.store.StorageRoot;
import caryatid.store.Store;
import caryatid.usecase.file.FileProblem;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A clinic's fitting records: where they lie, and the clock by which they are kept. */
public final class Records {
  /** How long to wait while another program writes to the same record. */
  private static final Duration PATIENCE = Duration.ofSeconds(10);

  private final Path folder;
  private final Clock clock;
  private final Store store;

  private Records(Path folder, Clock clock) {
    this.folder = folder;
    this.clock = clock;
    this.store = new Store(folder, PATIENCE);
  }

  /**
   * The records in a folder, which is made when the first one is started.
   *
   * @throws BadInput if the folder is the storage root instead of the one it lies in
   */
  public static Records in(Path folder, Clock clock) throws BadInput {
    if (StorageRoot.is(folder)) {
      throw new BadInput(Problem.at(Place.of(folder.toString()), FileProblem.STORAGE_ROOT));
    }
    return new Records(folder, clock);
  }

  /** Where they lie. */
  public Path folder() {
    return folder;
  }

  /**
   * The kind of network drive that they lie on, where locks and the order of writing cannot be
   * relied on; empty on a disk of this computer.
   */
  public Optional<String> networkDrive() {
    return NetworkDrive.of(folder);
  }

  /** Whether others on this computer than owner and group can read them. */
  public boolean isOpen() {
    return FilePermissions.isOpen(folder);
  }

  /** The store in which they lie. */
  public Store store() {
    return store;
  }

  /** Where what was typed for a record and is not kept yet lies. */
  public Path drafts(RecordCode code) {
    return folder.resolve("drafts").resolve(code.text());
  }

  void removeDrafts(RecordCode code) throws StoreFailure {
    try {
      DurableFiles.delete(drafts(code));
    } catch (IOException e) {
      throw new StoreFailure(
          Problem.at(Place.of(drafts(code).toString()), FileProblem.CANNOT_WRITE, Argument.why(e)));
    }
  }

  /** What cannot be shown of a record, with its damage, which may be the reason, before it. */
  static BadInput damageFirst(FittingRecord record, BadInput failure) {
    List<Problem> problems = new ArrayList<>(record.notShown());
    problems.addAll(failure.problems());
    return new BadInput(problems);
  }

  /** The time now, to the second. */
  public OffsetDateTime now() {
    return OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS);
  }
}
