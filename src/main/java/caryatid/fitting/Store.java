package caryatid.fitting;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A clinic's fitting records: an OCFL 1.1 storage root with one object per prosthesis. Every
 * addition is a new version; nothing is changed, and nothing removed but by {@link #erase}.
 */
public final class Store {
  private final StoreFolder folder;
  private final Duration patience;

  /**
   * The store in a folder; it is made when the first record is started.
   *
   * @param folder where it is or will be
   * @param patience how long to wait while somebody else writes to the same record
   */
  public Store(Path folder, Duration patience) {
    this.folder = new StoreFolder(folder);
    this.patience = patience;
  }

  /**
   * The codes of all records, in alphabetical order; none where there is no store yet.
   *
   * @throws BadInput if the folder cannot be read
   */
  public List<String> codes() throws BadInput {
    try {
      return Stream.concat(
              folder.names(folder.records()).stream().filter(this::isStarted),
              folder.names(folder.erasing()).stream())
          .filter(RecordCode::isCode)
          .distinct()
          .sorted()
          .toList();
    } catch (IOException e) {
      throw bad(folder.records(), Keeping.CANNOT_READ, e);
    }
  }

  /**
   * Starts a record.
   *
   * @param opening its first entry
   * @throws BadInput if there is a record of that code already, in whatever case its letters are,
   *     or it cannot be written; nothing is left of it then
   */
  public Entry start(RecordCode code, Addition opening) throws BadInput {
    return locked(
        folder.lock(),
        opening.by(),
        () -> {
          Repositories.make(folder);
          requireFree(code);
          return writing(code, opening.by(), () -> put(requireUnstarted(code), 1, opening));
        });
  }

  /**
   * Adds an entry to a record.
   *
   * @throws BadInput if there is no such record, it was erased or is damaged, the corrected entry
   *     is not there, or it cannot be written; the record is then as it was
   */
  public Entry add(RecordCode code, Addition addition) throws BadInput {
    requireStarted(code);
    return writing(
        code,
        addition.by(),
        () -> {
          FittingRecord record = requireGood(code);
          Corrections.check(record, addition);
          return put(code, record.size() + 1, addition);
        });
  }

  /**
   * Reads a record: what is whole of it, and what is not.
   *
   * @throws BadInput if there is no such record, or nothing of it can be read
   */
  public FittingRecord read(RecordCode code) throws BadInput {
    requireStarted(code);
    Optional<FittingRecord> read = RecordReader.read(files(code));
    boolean settled = read.isPresent() && read.get().damage().isEmpty();
    if (settled && !erasing(code).isPending()) {
      return read.get();
    }
    settleIfNobodyWrites(code);
    requireStarted(code);
    return RecordReader.read(files(code))
        .orElseThrow(() -> new BadInput(Problem.at(Place.of(code.text()), Keeping.DAMAGED)));
  }

  /**
   * Erases a record for good and leaves an entry that says when, by whom and why.
   *
   * @throws BadInput if there is no such record, or it cannot be erased
   */
  public void erase(RecordCode code, OffsetDateTime at, String by, String why) throws BadInput {
    requireStarted(code);
    writing(
        code,
        by,
        () -> {
          int size = RecordReader.read(files(code)).map(FittingRecord::size).orElse(0);
          Map<String, Answers.Value> said = new LinkedHashMap<>();
          said.put("why", new Answers.Value.Words(why));
          said.put("entries", new Answers.Value.Amount(BigDecimal.valueOf(size)));
          erasing(code)
              .erase(
                  new Entry(
                      1,
                      EntryKind.ERASURE,
                      at,
                      by,
                      Optional.empty(),
                      new Answers(said),
                      List.of()));
          return size;
        });
  }

  /**
   * Checks every byte of a record: sums and structure by the library's validator, entries by their
   * forms.
   *
   * @return what is wrong, file by file; empty for a record in good order
   * @throws BadInput if there is no such record
   */
  public List<Problem> verify(RecordCode code) throws BadInput {
    requireStarted(code);
    try {
      return writing(code, "verify", () -> Verifying.verify(folder.record(code), files(code)));
    } catch (BadInput e) {
      if (e.problems().get(0).topic() != Keeping.CANNOT_WRITE) {
        throw e;
      }
      return Verifying.verify(folder.record(code), files(code));
    }
  }

  private Entry put(RecordCode code, int number, Addition addition) throws IOException, BadInput {
    try (Workplace work = new Workplace(folder, code)) {
      return work.adding().add(number, addition);
    } catch (BadInput e) {
      throw afterwards(code, number, e);
    }
  }

  /**
   * What to say of an addition that failed: nothing of it is left, or all of it is there after all.
   */
  private BadInput afterwards(RecordCode code, int number, BadInput failure) {
    try {
      Settling.settle(folder.record(code), folder.replacing());
    } catch (IOException leftForTheNextOne) {
      // The same disk fails again; whoever opens the record next settles it.
    }
    boolean there = RecordReader.read(files(code)).filter(r -> r.size() == number).isPresent();
    return there
        ? new BadInput(
            Problem.at(
                Place.of(code.text()),
                Keeping.WRITTEN_BUT,
                failure.problems().get(0).arguments().toArray(new Argument[0])))
        : failure;
  }

  /** Runs something with the record's lock held and what was interrupted before it settled. */
  private <T> T writing(RecordCode code, String by, RecordLock.Work<T> work) throws BadInput {
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

  private <T> T locked(Path lock, String by, RecordLock.Work<T> work) throws BadInput {
    try {
      return RecordLock.holding(lock, by, patience, work);
    } catch (IOException e) {
      throw bad(folder.folder(), Keeping.CANNOT_WRITE, e);
    }
  }

  private void settleIfNobodyWrites(RecordCode code) {
    try {
      writing(code, "reader", () -> 0);
    } catch (BadInput inUseOrNotWritable) {
      // Then what is whole is shown as it is.
    }
  }

  private FittingRecord requireGood(RecordCode code) throws BadInput {
    requireStarted(code);
    FittingRecord record =
        RecordReader.read(files(code))
            .orElseThrow(() -> new BadInput(Problem.at(Place.of(code.text()), Keeping.DAMAGED)));
    if (!record.damage().isEmpty()) {
      throw new BadInput(record.damage());
    }
    if (record.isErased()) {
      throw new BadInput(Problem.at(Place.of(code.text()), Keeping.WAS_ERASED));
    }
    return record;
  }

  /**
   * No code may differ from another by the case of its letters alone: some file systems take both
   * for one.
   */
  private void requireFree(RecordCode code) throws BadInput {
    for (String other : codes()) {
      if (other.equalsIgnoreCase(code.text()) && !other.equals(code.text())) {
        throw new BadInput(Problem.at(Place.of(other), Keeping.RECORD_EXISTS));
      }
    }
  }

  private RecordCode requireUnstarted(RecordCode code) throws BadInput {
    if (isStarted(code)) {
      throw new BadInput(Problem.at(Place.of(code.text()), Keeping.RECORD_EXISTS));
    }
    return code;
  }

  private void requireStarted(RecordCode code) throws BadInput {
    if (!isStarted(code)) {
      throw new BadInput(
          Problem.at(
              Place.of(code.text()),
              Keeping.NO_SUCH_RECORD,
              Argument.text(folder.folder().toString())));
    }
  }

  /** Not so a folder in which a start got no further than the declaration. */
  private boolean isStarted(String code) {
    return Files.isDirectory(folder.records().resolve(code).resolve("v1"));
  }

  private boolean isStarted(RecordCode code) {
    return isStarted(code.text()) || erasing(code).isPending();
  }

  private ObjectFiles files(RecordCode code) {
    return new ObjectFiles(new DurableStorage(folder.records(), folder.replacing()), code);
  }

  private Erasing erasing(RecordCode code) {
    return new Erasing(folder, code);
  }

  private static BadInput bad(Path place, Keeping what, IOException e) {
    return new BadInput(Problem.at(Place.of(place.toString()), what, Argument.text(Reason.of(e))));
  }
}
