package caryatid.store;

import caryatid.disk.FilePermissions;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.fitting.Addition;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A clinic's fitting records: an OCFL 1.1 storage root with one object per prosthesis. Every
 * addition is a new version; nothing is changed, and nothing removed but by {@link #erase}.
 */
public final class Store {
  private final StoreFolder folder;
  private final StoreLocking locking;
  private final StoreContents contents;

  /**
   * The store in a folder; it is made when the first record is started.
   *
   * @param folder where it is or will be
   * @param patience how long to wait while another program writes to the same record
   */
  public Store(Path folder, Duration patience) {
    this.folder = new StoreFolder(folder);
    this.locking = new StoreLocking(this.folder, patience);
    this.contents = new StoreContents(this.folder);
  }

  /**
   * The codes of all records, in alphabetical order; none where there is no store yet.
   *
   * @throws StoreFailure if the folder cannot be read
   */
  public List<String> codes() throws StoreFailure {
    try {
      return contents.codes();
    } catch (IOException e) {
      throw FailureReason.failure(folder.records(), StoreProblem.CANNOT_READ, e);
    }
  }

  /**
   * The one entry that is left of an erased record; empty for a record that was not erased.
   *
   * @throws BadInput if nothing of it can be read
   */
  public Optional<Entry> erasure(RecordCode code) throws BadInput {
    return RecordErasure.isErased(folder.record(code))
        ? read(code).entries().stream().filter(e -> e.kind() == EntryKind.ERASURE).findFirst()
        : Optional.empty();
  }

  /**
   * Makes the store's folder, which must not be there yet, for a group: what is made in it is for
   * that group as well.
   *
   * @throws BadInput if it is there already; its group's rights stay as they are
   * @throws StoreFailure if it cannot be made
   */
  public void share() throws BadInput, StoreFailure {
    Path place = folder.folder();
    if (Files.exists(place)) {
      throw new BadInput(Problem.at(Place.of(place.toString()), StoreProblem.SHARED_LATE));
    }
    try {
      FilePermissions.createSharedFolder(place);
    } catch (IOException e) {
      throw FailureReason.failure(place, StoreProblem.CANNOT_WRITE, e);
    }
  }

  /**
   * Starts a record.
   *
   * @param opening its first entry
   * @throws BadInput if there is a record of that code already, in whatever case its letters are
   * @throws StoreFailure if another program is writing, or it cannot be written; nothing is left of
   *     it then
   */
  public Entry start(RecordCode code, Addition opening) throws BadInput, StoreFailure {
    return locking.overAll(
        opening.by(),
        () -> {
          Repositories.make(folder);
          return locking.over(
              code,
              opening.by(),
              () -> {
                contents.requireFree(code);
                return new EntryWriter(locking, code).start(opening);
              });
        });
  }

  /**
   * Adds an entry to a record.
   *
   * @throws BadInput if there is no such record, it was erased or is damaged, the corrected entry
   *     is not there
   * @throws StoreFailure if another program is writing, or it cannot be written; the record is then
   *     as it was, unless the failure says otherwise
   */
  public Entry add(RecordCode code, Addition addition) throws BadInput, StoreFailure {
    contents.requireStarted(code);
    return locking.over(code, addition.by(), () -> new EntryWriter(locking, code).add(addition));
  }

  /**
   * Reads a record: its undamaged entries, and what is damaged.
   *
   * @throws BadInput if there is no such record, or nothing of it can be read
   */
  public FittingRecord read(RecordCode code) throws BadInput {
    return open(code).record();
  }

  /**
   * Reads a record, and gives the files that its entries keep.
   *
   * @throws BadInput if there is no such record, or nothing of it can be read
   */
  public StoredRecord open(RecordCode code) throws BadInput {
    contents.requireStarted(code);
    Optional<StoredRecord> read = RecordReader.read(contents.files(code));
    if (read.isPresent() && locking.isRecovered(read.get().record())) {
      return read.get();
    }
    locking.recoverIfPossible(code);
    return new EntryWriter(locking, code).readAnyhow();
  }

  /**
   * Reads a record as it was after an entry was added, with the head digest that it had then.
   *
   * @param entry the number of one of its entries
   * @throws BadInput if there is no such record, or its inventory of then is damaged
   */
  public StoredRecord openUpTo(RecordCode code, int entry) throws BadInput {
    contents.requireStarted(code);
    try {
      return RecordReader.readUpTo(contents.files(code), entry);
    } catch (IOException e) {
      throw new BadInput(Problem.at(Place.of(code.text()), StoreProblem.DAMAGED));
    }
  }

  /**
   * Erases a record for good and leaves an entry that says when, by whom and why.
   *
   * @throws BadInput if there is no such record, or it was erased before
   * @throws StoreFailure if another program is writing, or it cannot be erased
   */
  public void erase(RecordCode code, OffsetDateTime at, String by, String why)
      throws BadInput, StoreFailure {
    contents.requireStarted(code);
    locking.overAll(by, () -> eraseAlone(code, at, by, why));
  }

  private int eraseAlone(RecordCode code, OffsetDateTime at, String by, String why)
      throws BadInput, StoreFailure {
    return locking.over(
        code,
        by,
        () -> {
          Leftovers leftovers = new Leftovers(folder, code);
          leftovers.requireNoLink();
          int size =
              RecordReader.read(contents.files(code))
                  .map(stored -> stored.record().size())
                  .orElse(0);
          locking.erasure(code).erase(RecordErasure.entry(at, by, why, size));
          leftovers.sweep();
          return size;
        });
  }

  /**
   * Checks every byte of a record: sums and structure by the library's validator, entries by their
   * forms.
   *
   * @return what is wrong, file by file; empty for a record in good order
   * @throws BadInput if there is no such record
   * @throws StoreFailure if another program is writing to it
   */
  public List<Problem> verify(RecordCode code) throws BadInput, StoreFailure {
    return checked(
        code,
        () -> {
          List<Problem> found = new ArrayList<>(StorageRoot.damage(folder.records()));
          found.addAll(RecordVerifier.verify(folder.record(code), contents.files(code)));
          return found;
        });
  }

  /**
   * Checks every byte of a record against its sum and every entry against its form. Faster than
   * {@link #verify}, which also runs the library's validator of the structure.
   *
   * @return what is wrong, file by file; empty for a record in good order
   * @throws BadInput if there is no such record
   * @throws StoreFailure if another program is writing to it
   */
  public List<Problem> damage(RecordCode code) throws BadInput, StoreFailure {
    return checked(code, () -> RecordVerifier.bytes(contents.files(code)));
  }

  private List<Problem> checked(RecordCode code, Supplier<List<Problem>> check)
      throws BadInput, StoreFailure {
    contents.requireStarted(code);
    RecordLock.Work<List<Problem>> work =
        () -> {
          contents.requireStarted(code);
          return check.get();
        };
    try {
      return locking.over(code, "verify", work);
    } catch (StoreFailure e) {
      if (e.problems().get(0).topic() != StoreProblem.CANNOT_WRITE) {
        throw e;
      }
      // A store that cannot be written to can be verified without a lock.
      return check.get();
    }
  }

  /**
   * Packs a record as a zip (BagIt, RFC 8493).
   *
   * @param zip the file; it must not be there yet
   * @param beside what people read, added to the zip
   * @throws BadInput if there is no such record, or it is damaged
   * @throws StoreFailure if another program is writing to it, or the file cannot be written
   */
  public void pack(RecordCode code, Path zip, BesideRecord beside) throws BadInput, StoreFailure {
    List<Problem> found = verify(code);
    if (!found.isEmpty()) {
      throw new BadInput(found);
    }
    List<Entry> entries = read(code).entries();
    try {
      BagItPackage.pack(
          folder.record(code), code, entries.get(entries.size() - 1).at(), beside, zip);
    } catch (IOException e) {
      throw FailureReason.failure(zip, StoreProblem.CANNOT_WRITE, e);
    }
  }

  /**
   * Takes in a record that was packed.
   *
   * @param by who does it, for others to see meanwhile
   * @return its code
   * @throws BadInput if the zip is damaged, hostile or no packed record, or the code is taken;
   *     nothing is written then
   * @throws StoreFailure if another program is writing, the zip cannot be read or the record cannot
   *     be written
   */
  public RecordCode unpack(Path zip, String by) throws BadInput, StoreFailure {
    if (!Files.exists(folder.folder())) {
      RecordImport.tryOut(zip);
    }
    return locking.overAll(
        by, () -> new RecordImport(folder, zip).run(contents::requireFree, Repositories::make));
  }
}
