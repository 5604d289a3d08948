package caryatid.usecase.stand;

import caryatid.disk.DurableFiles;
import caryatid.disk.FilePermissions;
import caryatid.fitting.RecordCode;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.usecase.Records;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What was typed and recorded for a state of alignment and is not in the record yet. It lies on the
 * disk beside the records, outlives the program, and becomes an entry only when somebody keeps it.
 * One program at a time has it.
 */
public final class StandDraft {
  private static final String FILE = "draft";
  private static final String NAME = "name";
  private static final String COUNTED = "counted";
  private static final Pattern NAMES = Pattern.compile("(?!recording)[a-z][a-z0-9.\\[\\]-]*");
  private static final int MOST_RECORDINGS = 99;

  private final String code;
  private final Path folder;
  private final FoundBefore before;
  private final DraftFile file;

  private StandDraft(String code, Path folder, FoundBefore before) {
    this.code = code;
    this.folder = folder;
    this.before = before;
    this.file = new DraftFile(folder.resolve(FILE));
  }

  /**
   * A recording that arrived.
   *
   * @param number its own, which stays
   * @param counted whether somebody confirmed that it is a stand of this state
   * @param file its bytes, under the name it had
   * @param state its name, size and time: another one where its bytes are others
   */
  public record Arrived(int number, boolean counted, NamedBytes file, String state) {}

  /**
   * The draft of a record.
   *
   * @param before what was found in drafts before
   * @throws BadInput if a record cannot have this code
   */
  public static StandDraft of(Records records, String code, FoundBefore before) throws BadInput {
    return new StandDraft(code, records.drafts(RecordCode.of(code)), before);
  }

  /** What was found in this one before. */
  FoundBefore before() {
    return before;
  }

  /** What was typed, by the names of the fields. */
  public synchronized Map<String, String> fields() throws StoreFailure {
    Map<String, String> fields = new LinkedHashMap<>(all());
    fields.keySet().removeIf(name -> name.startsWith("recording["));
    return fields;
  }

  /** Whether anything was typed, or a recording arrived. */
  public synchronized boolean isBegun() throws StoreFailure {
    return !all().isEmpty();
  }

  /** Keeps what was typed; it is on the disk when this returns. */
  public synchronized void type(Map<String, String> fields) throws StoreFailure {
    Map<String, String> changed = new LinkedHashMap<>();
    fields.forEach(
        (name, value) -> {
          if (NAMES.matcher(name).matches()) {
            changed.put(name, value);
          }
        });
    all()
        .forEach(
            (name, value) -> {
              if (name.startsWith("recording[")) {
                changed.put(name, value);
              }
            });
    write(changed);
  }

  /**
   * Takes a recording, not yet counted.
   *
   * @param name the name it has; never a path on this disk
   * @return its number
   * @throws BadInput if there are too many
   * @throws StoreFailure if not all of it came, or it cannot be written; nothing of it is left then
   */
  public synchronized int take(String name, InputStream bytes) throws BadInput, StoreFailure {
    int number = 1 + arrived().stream().mapToInt(Arrived::number).max().orElse(0);
    if (number > MOST_RECORDINGS) {
      throw new BadInput(
          Problem.at(
              Place.of(DraftFile.bare(name, "recording")),
              StandFault.TOO_MANY,
              Argument.count(MOST_RECORDINGS)));
    }
    try {
      FilePermissions.createPrivateFolder(folder);
      Path taken = recording(number);
      Files.deleteIfExists(taken);
      Files.createFile(taken, FilePermissions.file(taken));
      try (var out = Files.newOutputStream(taken)) {
        bytes.transferTo(out);
      }
      DurableFiles.syncTree(folder);
    } catch (IOException e) {
      delete(number);
      throw failure(e);
    }
    Map<String, String> changed = new LinkedHashMap<>(all());
    List<String> there = arrived().stream().map(stand -> stand.file().name()).toList();
    forgetStretch(changed, number);
    changed.put(key(number, NAME), DraftFile.unique(DraftFile.bare(name, "recording"), there));
    write(changed);
    return number;
  }

  private Path recording(int number) {
    return folder.resolve("recording-" + number);
  }

  private static String key(int number, String what) {
    return "recording[" + number + "]." + what;
  }

  /** The recordings that arrived, in their order. */
  public synchronized List<Arrived> arrived() throws StoreFailure {
    List<Arrived> arrived = new ArrayList<>();
    Map<String, String> all = all();
    for (int i = 1; i <= MOST_RECORDINGS; i++) {
      Optional<String> name = Optional.ofNullable(all.get(key(i, NAME)));
      if (name.isPresent() && Files.isRegularFile(recording(i))) {
        boolean counted = "yes".equals(all.get(key(i, COUNTED)));
        NamedBytes file = DraftFile.onDisk(name.get(), recording(i));
        arrived.add(new Arrived(i, counted, file, state(i, name.get())));
      }
    }
    return arrived;
  }

  private String state(int number, String name) throws StoreFailure {
    try {
      var now = Files.readAttributes(recording(number), BasicFileAttributes.class);
      return now.size() + " " + now.lastModifiedTime() + " " + name;
    } catch (IOException e) {
      throw failure(e);
    }
  }

  /** What was asked is so: kept with the sheet. */
  public synchronized void mean(String answer) throws StoreFailure {
    Map<String, String> fields = fields();
    int number = 1;
    while (fields.containsKey(StandFields.MEANT + "[" + number + "]")) {
      number++;
    }
    fields.put(StandFields.MEANT + "[" + number + "]", answer);
    type(fields);
  }

  /** Somebody confirmed that a recording is a stand of this state, or takes that back. */
  public synchronized void count(int number, boolean counted) throws StoreFailure {
    Map<String, String> changed = new LinkedHashMap<>(all());
    if (changed.containsKey(key(number, NAME))) {
      changed.put(key(number, COUNTED), counted ? "yes" : "no");
      write(changed);
    }
  }

  /** Removes a recording from the draft. */
  public synchronized void remove(int number) throws StoreFailure {
    Map<String, String> changed = new LinkedHashMap<>(all());
    changed.remove(key(number, NAME));
    changed.remove(key(number, COUNTED));
    forgetStretch(changed, number);
    write(changed);
    delete(number);
  }

  /** A number that is free again must not hand its stretch on. */
  private static void forgetStretch(Map<String, String> fields, int number) {
    fields.remove(StandFields.ofRecording(StandFields.FROM_S, number));
    fields.remove(StandFields.ofRecording(StandFields.TO_S, number));
  }

  private void delete(int number) throws StoreFailure {
    try {
      Files.deleteIfExists(recording(number));
    } catch (IOException e) {
      throw failure(e);
    }
  }

  /** Removes the draft, and what was found in it; drafts of other forms stay. */
  public synchronized void clear() throws StoreFailure {
    forget();
    file.remove();
    for (int i = 1; i <= MOST_RECORDINGS; i++) {
      delete(i);
    }
    try {
      Files.deleteIfExists(folder);
    } catch (DirectoryNotEmptyException e) {
      return; // Another form is drafted.
    } catch (IOException e) {
      throw failure(e);
    }
  }

  /** Nothing of it stays in memory. */
  public void forget() {
    before.forget(code);
  }

  private Map<String, String> all() throws StoreFailure {
    return file.read();
  }

  private void write(Map<String, String> all) throws StoreFailure {
    file.write(all);
  }

  private StoreFailure failure(IOException e) {
    return DraftFile.failure(folder, e);
  }
}
