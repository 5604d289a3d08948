package caryatid.store;

import caryatid.entry.Entry;
import caryatid.fitting.Addable;
import caryatid.fitting.Addition;
import caryatid.fitting.Corrections;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.NamedStands;
import caryatid.fitting.RecordCode;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Optional;

/** Adds entries to a record whose lock is held. */
final class Writing {
  private final Custody custody;
  private final RecordCode code;

  Writing(Custody custody, RecordCode code) {
    this.custody = custody;
    this.code = code;
  }

  Entry add(Addition addition) throws BadInput, StoreFailure, IOException {
    try (Workplace work = new Workplace(custody.folder(), code)) {
      Optional<FittingRecord> read = work.read(custody.files(code));
      FittingRecord record = read.isPresent() ? read.get() : readAnyhow().record();
      Addable.require(record);
      Corrections.check(record, addition);
      NamedStands.check(record, addition);
      DuplicateStandCheck.require(record, addition);
      return write(work, record.size() + 1, addition);
    }
  }

  Entry start(Addition opening) throws BadInput, StoreFailure, IOException {
    try (Workplace work = new Workplace(custody.folder(), code)) {
      return write(work, 1, opening);
    }
  }

  private Entry write(Workplace work, int number, Addition addition) throws BadInput, StoreFailure {
    try {
      return work.adding().add(number, addition);
    } catch (StoreFailure e) {
      throw afterwards(number, e);
    }
  }

  /**
   * What to say of an addition that failed: nothing of it is left, or all of it is there after all.
   */
  private StoreFailure afterwards(int number, StoreFailure failure) {
    try {
      Settling.settle(custody.folder().record(code), custody.folder().replacing());
    } catch (IOException leftForTheNextOne) {
      // The same disk fails again; whoever opens the record next settles it.
    }
    // A version in its place is an addition, listed or not: the next one who opens it lists it.
    boolean there = Files.isDirectory(custody.folder().record(code).resolve("v" + number));
    Argument[] reason = failure.problems().get(0).arguments().toArray(new Argument[0]);
    return there
        ? new StoreFailure(Problem.at(Place.of(code.text()), StoreProblem.WRITTEN_BUT, reason))
        : failure;
  }

  /** The record, however much of it is whole. */
  StoredRecord readAnyhow() throws BadInput {
    custody.requireStarted(code);
    return RecordReader.read(custody.files(code))
        .orElseThrow(() -> new BadInput(Problem.at(Place.of(code.text()), StoreProblem.DAMAGED)));
  }
}
