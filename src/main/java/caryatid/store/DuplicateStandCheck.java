package caryatid.store;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.fitting.Addition;
import caryatid.fitting.FittingRecord;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Refuses a stand that is in a record already, by the SHA-512 of its recordings and sheet: the last
 * check, under the record's lock. The same recording with another sheet is asked about before.
 */
public final class DuplicateStandCheck {
  private DuplicateStandCheck() {}

  /**
   * Requires that a stand is not in the record already.
   *
   * @throws BadInput if an entry that it does not correct holds the same recordings and the same
   *     sheet, byte for byte
   * @throws StoreFailure if a file that is to be added cannot be read
   */
  public static void require(FittingRecord record, Addition addition)
      throws BadInput, StoreFailure {
    if (addition.kind() != EntryKind.STAND) {
      return;
    }
    List<Entry> sameSheet = having(KeptFile.Role.SHEET, record, addition, others(record, addition));
    Optional<Entry> same =
        having(KeptFile.Role.RECORDING, record, addition, sameSheet).stream().findFirst();
    if (same.isPresent()) {
      throw new BadInput(
          Problem.at(
              Place.of(record.code().text()),
              StoreProblem.EXACT_DOUBLE,
              Argument.count(same.get().number())));
    }
  }

  private static List<Entry> others(FittingRecord record, Addition addition) {
    return record.stands().stream()
        .filter(e -> addition.corrects().filter(c -> c.number() == e.number()).isEmpty())
        .filter(e -> !e.recordings().isEmpty())
        .toList();
  }

  /** Those that hold the same files; where there are none to compare, nothing is read. */
  private static List<Entry> having(
      KeptFile.Role role, FittingRecord record, Addition addition, List<Entry> entries)
      throws StoreFailure {
    if (entries.isEmpty()) {
      return entries;
    }
    List<String> added = digests(role, record, addition);
    return entries.stream().filter(e -> digests(role, record, e).equals(added)).toList();
  }

  private static List<String> digests(KeptFile.Role role, FittingRecord record, Entry entry) {
    return entry.files().stream()
        .filter(file -> file.is() == role)
        .map(file -> record.digest(entry, file).orElse(""))
        .toList();
  }

  private static List<String> digests(KeptFile.Role role, FittingRecord record, Addition addition)
      throws StoreFailure {
    List<String> digests = new ArrayList<>();
    for (Addition.Attached file : addition.files()) {
      if (file.is() == role) {
        try (InputStream bytes = file.bytes().open()) {
          digests.add(Digests.of(Digests.SHA_512, bytes));
        } catch (IOException e) {
          Argument reason = Argument.text(FailureReason.of(e));
          throw new StoreFailure(
              Problem.at(Place.of(record.code().text()), StoreProblem.CANNOT_WRITE, reason));
        }
      }
    }
    return digests;
  }
}
