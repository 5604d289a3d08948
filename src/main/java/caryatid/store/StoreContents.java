package caryatid.store;

import caryatid.fitting.RecordCode;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which records a store holds.
 *
 * @param folder where they lie
 */
record StoreContents(StoreFolder folder) {

  /** The codes of all records, in alphabetical order. */
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
    return hasVersion(code.text()) || new RecordErasure(folder, code).isPending();
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
              Argument.term(FailureReason.NO_PERMISSION)));
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
}
