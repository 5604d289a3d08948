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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Refuses a stand that is in a record already, by the SHA-512 of its recordings and sheet. */
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
    Map<KeptFile.Role, List<String>> added = digests(record, addition);
    Optional<Entry> same =
        record.stands().stream()
            .filter(e -> addition.corrects().filter(c -> c.number() == e.number()).isEmpty())
            .filter(e -> !e.recordings().isEmpty() && digests(record, e).equals(added))
            .findFirst();
    if (same.isPresent()) {
      throw new BadInput(
          Problem.at(
              Place.of(record.code().text()),
              StoreProblem.EXACT_DOUBLE,
              Argument.count(same.get().number())));
    }
  }

  private static Map<KeptFile.Role, List<String>> digests(FittingRecord record, Entry entry) {
    Map<KeptFile.Role, List<String>> digests = new LinkedHashMap<>();
    for (KeptFile file : entry.files()) {
      if (decides(file.is())) {
        String digest = record.digest(entry, file).orElse("");
        digests.computeIfAbsent(file.is(), r -> new ArrayList<>()).add(digest);
      }
    }
    return digests;
  }

  private static Map<KeptFile.Role, List<String>> digests(FittingRecord record, Addition addition)
      throws StoreFailure {
    Map<KeptFile.Role, List<String>> digests = new LinkedHashMap<>();
    for (Addition.Attached file : addition.files()) {
      if (decides(file.is())) {
        try (InputStream bytes = file.bytes().open()) {
          String digest = Digests.of(Digests.SHA_512, bytes);
          digests.computeIfAbsent(file.is(), r -> new ArrayList<>()).add(digest);
        } catch (IOException e) {
          Argument reason = Argument.text(FailureReason.of(e));
          throw new StoreFailure(
              Problem.at(Place.of(record.code().text()), StoreProblem.CANNOT_WRITE, reason));
        }
      }
    }
    return digests;
  }

  private static boolean decides(KeptFile.Role is) {
    return is == KeptFile.Role.RECORDING || is == KeptFile.Role.SHEET;
  }
}
