package caryatid.store;

import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.fitting.Addition;
import caryatid.fitting.RecordCode;
import caryatid.format.EntryJson;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import io.ocfl.api.OcflObjectUpdater;
import io.ocfl.api.OcflRepository;
import io.ocfl.api.exception.OcflJavaException;
import io.ocfl.api.model.ObjectVersionId;
import io.ocfl.api.model.VersionInfo;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Puts an entry and its files into a record as its next version. */
final class VersionWriter {
  private final OcflRepository repository;
  private final RecordCode code;

  VersionWriter(OcflRepository repository, RecordCode code) {
    this.repository = repository;
    this.code = code;
  }

  /**
   * Adds an entry.
   *
   * @param number the entry's number: one more than the record has
   * @throws BadInput if it could not be read again
   * @throws StoreFailure if it cannot be written; the record is then as it was
   */
  Entry add(int number, Addition addition) throws BadInput, StoreFailure {
    List<KeptFile> kept = names(addition.files());
    Entry entry =
        new Entry(
            number, addition.at(), addition.by(), addition.corrects(), addition.content(), kept);
    add(entry, EntryJson.kept(entry), addition.files());
    return entry;
  }

  /** Adds an entry as the bytes that say it. */
  void add(Entry entry, byte[] json, List<Addition.Attached> files) throws StoreFailure {
    VersionInfo info =
        new VersionInfo()
            .setUser(entry.by(), null)
            .setMessage(entry.folder())
            .setCreated(entry.at());
    try {
      repository.updateObject(
          ObjectVersionId.head(code.text()), info, version -> fill(version, entry, json, files));
    } catch (UncheckedIOException e) {
      throw cannotWrite(e);
    } catch (OcflJavaException e) {
      throw cannotWrite(e);
    }
  }

  private static void fill(
      OcflObjectUpdater version, Entry entry, byte[] json, List<Addition.Attached> files) {
    put(version, entry.folder(), Entry.FILE, new ByteArrayInputStream(json));
    for (int i = 0; i < files.size(); i++) {
      try (InputStream bytes = files.get(i).bytes().open()) {
        put(version, entry.folder(), entry.files().get(i).name(), bytes);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private static void put(
      OcflObjectUpdater version, String folder, String name, InputStream bytes) {
    version.writeFile(bytes, folder + "/" + name);
  }

  private StoreFailure cannotWrite(RuntimeException e) {
    return new StoreFailure(
        Problem.at(
            Place.of(code.text()), StoreProblem.CANNOT_WRITE, Argument.text(FailureReason.of(e))));
  }

  /** Names for the files in the entry's folder: speaking, and each once. */
  private static List<KeptFile> names(List<Addition.Attached> files) {
    Set<String> taken = new HashSet<>();
    List<KeptFile> kept = new ArrayList<>();
    for (Addition.Attached file : files) {
      NamedBytes bytes = file.bytes();
      String name = KeptFile.nameFor(file.is(), bytes.name());
      String free = name;
      for (int i = 2; !taken.add(free.toLowerCase(Locale.ROOT)); i++) {
        free = numbered(name, i);
      }
      kept.add(new KeptFile(free, file.is(), file.name()));
    }
    return kept;
  }

  private static String numbered(String name, int number) {
    int dot = name.lastIndexOf('.');
    int end = dot > 0 ? dot : name.length();
    return name.substring(0, end) + "-" + number + name.substring(end);
  }
}
