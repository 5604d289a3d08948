package caryatid.store;

import caryatid.entry.Entry;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.UnreadableEntry;
import caryatid.format.EntryJson;
import caryatid.format.EntryReading;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a record's entries and compares each with the sum under which it was added. */
final class RecordReader {
  private final ObjectFiles files;
  private final List<Problem> damage = new ArrayList<>();
  private final List<UnreadableEntry> unread = new ArrayList<>();

  private RecordReader(ObjectFiles files) {
    this.files = files;
  }

  /**
   * Reads a record.
   *
   * @return empty if all its inventories are damaged
   */
  static Optional<StoredRecord> read(ObjectFiles files) {
    RecordReader reader = new RecordReader(files);
    return reader.inventory().map(head -> reader.record(head));
  }

  /** Reads a record whose inventory is read and was compared with its sum. */
  static StoredRecord read(ObjectFiles files, ObjectFiles.Vouched head) {
    return new RecordReader(files).record(head);
  }

  /**
   * Reads a record as it was after an entry was added.
   *
   * @throws IOException if the inventory of then cannot be read, or is not what its sum file says
   */
  static StoredRecord readUpTo(ObjectFiles files, int entry) throws IOException {
    return new RecordReader(files).record(files.inventory("v" + entry + "/"), entry);
  }

  private StoredRecord record(ObjectFiles.Vouched head) {
    return record(head, newestFirst().stream().findFirst().orElse(0));
  }

  private StoredRecord record(ObjectFiles.Vouched head, int newest) {
    Inventory inventory = head.inventory();
    noteOtherRecordOrOlder(inventory, newest);
    List<Entry> entries = entries(head);
    int added = damage.isEmpty() ? 0 : newest;
    FittingRecord record =
        new FittingRecord(
            files.code(),
            head.sum(),
            inventory.head(),
            Math.max(added, inventory.head()),
            inventory.files(),
            entries,
            damage,
            unread);
    return new StoredRecord(record, files, inventory.contents());
  }

  /**
   * The record's inventory, or if it is damaged that of the newest version with an undamaged one.
   */
  private Optional<ObjectFiles.Vouched> inventory() {
    try {
      return Optional.of(files.inventory(""));
    } catch (IOException e) {
      damaged(ObjectFiles.INVENTORY, Damage.INVENTORY, Argument.text(ObjectFiles.SUM));
    }
    return newestFirst().stream().flatMap(v -> version(v).stream()).findFirst();
  }

  /** One version more may be on its way; several are lost to an inventory from a backup. */
  private void noteOtherRecordOrOlder(Inventory inventory, int newest) {
    if (!inventory.id().equals(files.code().text())) {
      damaged(ObjectFiles.INVENTORY, Damage.OTHER_RECORD, Argument.text(inventory.id()));
    }
    if (damage.isEmpty() && newest > inventory.head() + 1) {
      damaged(
          ObjectFiles.INVENTORY,
          Damage.OLDER,
          Argument.count(inventory.head()),
          Argument.count(newest));
    }
  }

  private List<Integer> newestFirst() {
    try {
      return files.versions().stream().sorted(Comparator.reverseOrder()).toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  private Optional<ObjectFiles.Vouched> version(int number) {
    try {
      return Optional.of(files.inventory("v" + number + "/"));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private List<Entry> entries(ObjectFiles.Vouched head) {
    List<Entry> entries = new ArrayList<>();
    for (Map.Entry<String, String> file : head.inventory().files().entrySet()) {
      if (file.getKey().matches("\\d{4,7}-[^/]+/" + Entry.FILE)) {
        String path = head.inventory().contents().getOrDefault(file.getValue(), file.getKey());
        entry(file.getKey(), path, file.getValue()).ifPresent(entries::add);
      }
    }
    entries.sort(Comparator.comparingInt(Entry::number));
    return entries;
  }

  private Optional<Entry> entry(String logical, String path, String digest) {
    try {
      byte[] bytes = files.bytes(path);
      if (!Digests.of(Digests.SHA_512, bytes).equals(digest)) {
        return damaged(path, Damage.CHANGED);
      }
      return entry(EntryJson.read(bytes, named(path)), logical, path);
    } catch (IOException e) {
      return damaged(path, Damage.UNREADABLE, Argument.text(FailureReason.of(e)));
    }
  }

  /** The bytes are those that were added; what they say may still not be known. */
  private Optional<Entry> entry(EntryReading read, String logical, String path) {
    if (read instanceof EntryReading.Newer newer) {
      unread.add(new UnreadableEntry(number(logical), true, List.of(newer.problem())));
      return Optional.empty();
    }
    if (read instanceof EntryReading.Unreadable unreadable) {
      unread.add(new UnreadableEntry(number(logical), false, unreadable.problems()));
      return Optional.empty();
    }
    Entry entry = ((EntryReading.Done) read).entry();
    return logical.equals(entry.folder() + "/" + Entry.FILE)
        ? Optional.of(entry)
        : damaged(path, Damage.ENTRY);
  }

  private static int number(String path) {
    return Integer.parseInt(path.substring(0, path.indexOf('-')));
  }

  private Optional<Entry> damaged(String path, Damage what, Argument... arguments) {
    damage.add(Problem.at(Place.of(named(path)), what, arguments));
    return Optional.empty();
  }

  private String named(String path) {
    return files.code().text() + "/" + path;
  }
}
