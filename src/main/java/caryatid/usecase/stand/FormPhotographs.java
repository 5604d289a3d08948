package caryatid.usecase.stand;

import caryatid.disk.DurableFiles;
import caryatid.disk.FilePermissions;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile.Role;
import caryatid.fitting.Addition.Attached;
import caryatid.fitting.RecordCode;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.usecase.KeptPhotograph;
import caryatid.usecase.KeptPhotograph.Original;
import caryatid.usecase.Records;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Photographs that wait to be kept with the entry that is drafted in a form: the pictures alone,
 * without what a camera wrote. They outlive the program and go with the record.
 */
public final class FormPhotographs {
  private static final int MOST = 20;

  private final Path folder;
  private final String lead;
  private final DraftFile names;

  private FormPhotographs(Path folder, EntryKind kind) {
    this.folder = folder;
    this.lead = "photograph-" + kind.key() + "-";
    this.names = new DraftFile(folder.resolve("photographs-" + kind.key()));
  }

  /**
   * A photograph.
   *
   * @param number its own, which stays
   * @param picture as the entry will keep it
   */
  public record Waiting(int number, NamedBytes picture) {}

  /**
   * Those of a form.
   *
   * @throws BadInput if a record cannot have this code
   */
  public static FormPhotographs of(Records records, String code, EntryKind kind) throws BadInput {
    return new FormPhotographs(records.drafts(RecordCode.of(code)), kind);
  }

  /** All that wait, in their order. */
  public synchronized List<Waiting> all() throws StoreFailure {
    Map<Integer, String> sorted = new TreeMap<>();
    names.read().forEach((number, name) -> sorted.put(Integer.valueOf(number), name));
    List<Waiting> all = new ArrayList<>();
    sorted.forEach(
        (number, name) -> {
          if (Files.isRegularFile(file(number))) {
            all.add(new Waiting(number, DraftFile.onDisk(name, file(number))));
          }
        });
    return all;
  }

  /** One of them. */
  public Optional<Waiting> find(int number) throws StoreFailure {
    return all().stream().filter(one -> one.number() == number).findFirst();
  }

  /** What the entry keeps of them. */
  public List<Attached> attached() throws StoreFailure {
    return all().stream().map(one -> new Attached(Role.PHOTOGRAPH, one.picture())).toList();
  }

  /**
   * Takes a photograph; its picture is on the disk when this returns.
   *
   * @throws BadInput if it is no photograph, or there are too many
   */
  public synchronized void take(NamedBytes photograph) throws BadInput, StoreFailure {
    List<Waiting> there = all();
    if (there.size() >= MOST) {
      throw new BadInput(
          Problem.at(
              Place.of(photograph.name()), StandFault.TOO_MANY_PHOTOGRAPHS, Argument.count(MOST)));
    }
    NamedBytes picture =
        KeptPhotograph.files(photograph, Optional.of(Original.DROP)).get(0).bytes();
    int number = 1 + there.stream().mapToInt(Waiting::number).max().orElse(0);
    List<String> taken = there.stream().map(one -> one.picture().name()).toList();
    String name = DraftFile.unique(DraftFile.bare(photograph.name(), "photograph"), taken);
    try {
      FilePermissions.createPrivateFolder(folder);
      DurableFiles.replace(file(number), picture.readAll(), folder);
    } catch (IOException e) {
      throw DraftFile.failure(folder, e);
    }
    Map<String, String> more = new TreeMap<>(names.read());
    more.put(Integer.toString(number), name);
    names.write(more);
  }

  /** Takes one away. */
  public synchronized void remove(int number) throws StoreFailure {
    Map<String, String> fewer = new TreeMap<>(names.read());
    fewer.remove(Integer.toString(number));
    names.write(fewer);
    delete(number);
  }

  /** Takes all away. */
  public synchronized void clear() throws StoreFailure {
    List<Waiting> all = all();
    names.remove();
    for (Waiting one : all) {
      delete(one.number());
    }
  }

  private Path file(int number) {
    return folder.resolve(lead + number);
  }

  private void delete(int number) throws StoreFailure {
    try {
      Files.deleteIfExists(file(number));
    } catch (IOException e) {
      throw DraftFile.failure(file(number), e);
    }
  }
}
