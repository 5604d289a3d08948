package caryatid.store;

import caryatid.disk.DurableFiles;
import caryatid.disk.FilePermissions;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A backup of a store: a folder with each record as a packed zip, and a list of the zips with their
 * sums that {@code sha512sum -c} checks as well. It is written under another name and gets its own
 * when all of it was read back and checked.
 */
public final class Backup {
  /** The list of zips. */
  static final String LIST = "backup.sha512";

  private static final String ZIP = ".zip";
  private static final String PART = ".part";
  private static final Pattern LINE = Pattern.compile("([0-9a-f]{128})  (.+)\\.zip");

  private final Store store;
  private final Path folder;

  /**
   * A backup of a store, made or to be made.
   *
   * @param folder where it lies
   */
  public Backup(Store store, Path folder) {
    this.store = store;
    this.folder = folder;
  }

  /**
   * What was backed up.
   *
   * @param codes of the records in it
   * @param damage what is damaged in the records that are not in it
   */
  public record Made(List<String> codes, List<Problem> damage) {
    public Made {
      codes = List.copyOf(codes);
      damage = List.copyOf(damage);
    }
  }

  /**
   * Backs all records up that are in good order, and checks every byte of what was written.
   *
   * @param readMe lines that each zip leads with
   * @throws BadInput if the folder is there already, or there is no record
   * @throws StoreFailure if another program is writing to a record, or the backup cannot be written
   */
  public Made make(List<String> readMe) throws BadInput, StoreFailure {
    Path part = folder.resolveSibling(folder.getFileName() + PART);
    requireAbsent(folder);
    requireAbsent(part);
    List<String> all = store.codes();
    if (all.isEmpty()) {
      throw new BadInput(problem(StoreProblem.NOTHING_TO_BACK_UP));
    }
    try {
      FilePermissions.createPrivateFolder(part);
      Made made = pack(all, part, readMe);
      byte[] list = list(made.codes(), part).getBytes(StandardCharsets.UTF_8);
      DurableFiles.write(part.resolve(LIST), out -> out.write(list), false);
      check(part);
      DurableFiles.rename(part, folder);
      return made;
    } catch (IOException e) {
      throw FailureReason.failure(folder, StoreProblem.CANNOT_WRITE, e);
    } finally {
      discard(part);
    }
  }

  private Made pack(List<String> all, Path part, List<String> readMe)
      throws BadInput, StoreFailure {
    List<String> codes = new ArrayList<>();
    List<Problem> damage = new ArrayList<>();
    for (String code : all) {
      RecordCode record = new RecordCode(code);
      List<Problem> found = store.damage(record);
      damage.addAll(found);
      if (found.isEmpty()) {
        store.pack(record, part.resolve(code + ZIP), new BesideRecord(readMe, Optional.empty()));
        codes.add(code);
      }
    }
    return new Made(codes, damage);
  }

  private static String list(List<String> codes, Path part) throws IOException {
    StringBuilder lines = new StringBuilder();
    for (String code : codes) {
      lines.append(sum(part.resolve(code + ZIP))).append("  ").append(code).append(ZIP + "\n");
    }
    return lines.toString();
  }

  private static String sum(Path zip) throws IOException {
    try (InputStream bytes = Files.newInputStream(zip)) {
      return Digests.of(Digests.SHA_512, bytes);
    }
  }

  /**
   * Takes all records of the backup into a store that has none, after all of it was checked.
   *
   * @param by who does it, for others to see meanwhile
   * @return their codes
   * @throws BadInput if the store has records, or anything about the backup is wrong; nothing is
   *     written then
   * @throws StoreFailure if another program is writing, or it cannot be read or written; records
   *     that were taken in by then are complete and stay
   */
  public List<String> restore(String by) throws BadInput, StoreFailure {
    if (!store.codes().isEmpty()) {
      throw new BadInput(problem(StoreProblem.NOT_EMPTY));
    }
    try {
      List<String> codes = check(folder);
      for (String code : codes) {
        store.unpack(folder.resolve(code + ZIP), by);
      }
      for (String code : codes) {
        requireSound(store.damage(new RecordCode(code)));
      }
      return codes;
    } catch (IOException e) {
      throw FailureReason.failure(folder, StoreProblem.CANNOT_READ, e);
    }
  }

  private static void requireSound(List<Problem> damage) throws BadInput {
    if (!damage.isEmpty()) {
      throw new BadInput(damage);
    }
  }

  /** Every zip that is listed is there with its sum and holds its record in good order. */
  private List<String> check(Path backup) throws BadInput, StoreFailure, IOException {
    Map<String, String> sums = sums(backup);
    TreeSet<String> there = new TreeSet<>();
    try (Stream<Path> files = Files.list(backup)) {
      files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(ZIP))
          .forEach(name -> there.add(name.substring(0, name.length() - ZIP.length())));
    }
    List<Problem> problems = new ArrayList<>();
    for (String code : there) {
      if (!sums.containsKey(code)) {
        problems.add(problem(backup.resolve(code + ZIP), StoreProblem.NOT_IN_BACKUP));
      }
    }
    for (Map.Entry<String, String> listed : sums.entrySet()) {
      Path zip = backup.resolve(listed.getKey() + ZIP);
      if (!there.contains(listed.getKey())) {
        problems.add(problem(zip, StoreProblem.MISSING_IN_BACKUP));
      } else if (!sum(zip).equals(listed.getValue())) {
        problems.add(problem(zip, StoreProblem.CHANGED_IN_BACKUP));
      } else {
        RecordImport.tryOut(zip);
      }
    }
    requireSound(problems);
    return List.copyOf(sums.keySet());
  }

  private static Map<String, String> sums(Path backup) throws BadInput, IOException {
    Path list = backup.resolve(LIST);
    if (!Files.isRegularFile(list)) {
      throw new BadInput(problem(backup, StoreProblem.NO_BACKUP));
    }
    Map<String, String> sums = new LinkedHashMap<>();
    for (String line : Files.readAllLines(list, StandardCharsets.UTF_8)) {
      Matcher parts = LINE.matcher(line);
      if (!parts.matches() || !RecordCode.isCode(parts.group(2))) {
        throw new BadInput(problem(list, StoreProblem.NO_BACKUP));
      }
      sums.put(parts.group(2), parts.group(1));
    }
    return sums;
  }

  private static void requireAbsent(Path place) throws BadInput {
    if (Files.exists(place)) {
      throw new BadInput(problem(place, StoreProblem.BACKUP_THERE));
    }
  }

  private static void discard(Path part) throws StoreFailure {
    try {
      DurableFiles.delete(part);
    } catch (IOException e) {
      throw FailureReason.failure(part, StoreProblem.CANNOT_WRITE, e);
    }
  }

  private Problem problem(StoreProblem what) {
    return problem(folder, what);
  }

  private static Problem problem(Path place, StoreProblem what) {
    return Problem.at(Place.of(place.toString()), what);
  }
}
