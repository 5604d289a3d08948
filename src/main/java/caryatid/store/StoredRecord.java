package caryatid.store;

import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.fitting.FittingRecord;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A record in the store: what its entries say, and the bytes of the files that they keep. */
public final class StoredRecord {
  private final FittingRecord record;
  private final ObjectFiles files;
  private final Map<String, String> contents;

  /**
   * @param contents where the bytes of a digest lie, relative to the record's folder
   */
  StoredRecord(FittingRecord record, ObjectFiles files, Map<String, String> contents) {
    this.record = record;
    this.files = files;
    this.contents = contents;
  }

  /** What its entries say. */
  public FittingRecord record() {
    return record;
  }

  /**
   * The bytes of a kept file, as they were added.
   *
   * @throws BadInput if they cannot be read, or are no longer what was added
   */
  public byte[] bytes(Entry entry, KeptFile file) throws BadInput {
    String path = entry.folder() + "/" + file.name();
    Optional<String> digest = record.digest(entry, file);
    if (digest.isEmpty()) {
      throw new BadInput(Problem.at(place(path), Damage.MISSING));
    }
    Place place = place(contents.getOrDefault(digest.get(), path));
    try {
      byte[] bytes = files.bytes(contents.getOrDefault(digest.get(), path));
      if (!Digests.of(Digests.SHA_512, bytes).equals(digest.get())) {
        throw new BadInput(Problem.at(place, Damage.CHANGED));
      }
      return bytes;
    } catch (IOException e) {
      throw new BadInput(Problem.at(place, Damage.UNREADABLE, Argument.text(FailureReason.of(e))));
    }
  }

  /** What is wrong with the files of an entry; empty if all of them are what was added. */
  public List<Problem> damage(Entry entry) {
    List<Problem> found = new ArrayList<>();
    for (KeptFile file : entry.files()) {
      try {
        bytes(entry, file);
      } catch (BadInput e) {
        found.addAll(e.problems());
      }
    }
    return List.copyOf(found);
  }

  private Place place(String path) {
    return Place.of(record.code().text() + "/" + path);
  }
}
