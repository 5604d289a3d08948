package caryatid.fitting;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds recordings that stand in a record twice, by their SHA-512 sums. Nobody stands twice alike
 * to the last digit: one recording under two stands is a slip, unless both are of one state.
 */
public final class Doubles {
  private Doubles() {}

  /** Stands that hold a recording which an earlier entry holds; corrected entries do not count. */
  static List<Remark> of(FittingRecord record) {
    Map<String, Integer> first = new LinkedHashMap<>();
    List<Remark> remarks = new ArrayList<>();
    for (Entry entry : byNumber(record)) {
      Map<Integer, List<String>> shared = new LinkedHashMap<>();
      for (KeptFile file : recordings(entry)) {
        record
            .digest(entry, file)
            .map(digest -> first.putIfAbsent(digest, entry.number()))
            .filter(other -> other != entry.number())
            .ifPresent(
                other ->
                    shared.computeIfAbsent(other, o -> new ArrayList<>()).add(file.original()));
      }
      shared.forEach((other, names) -> remarks.add(remark(entry, other, names)));
    }
    return List.copyOf(remarks);
  }

  /** What is said of one entry. */
  static List<Remark> of(FittingRecord record, Entry entry) {
    Argument number = Argument.count(entry.number());
    return of(record).stream().filter(r -> r.arguments().get(0).equals(number)).toList();
  }

  private static Remark remark(Entry entry, int other, List<String> names) {
    return Remark.of(
        Open.SAME_RECORDING,
        Argument.count(entry.number()),
        Argument.count(other),
        Argument.text(String.join(", ", names)));
  }

  /**
   * Requires that a stand is not in the record already.
   *
   * @throws BadInput if an entry that it does not correct holds the same recordings and the same
   *     sheet, byte for byte
   * @throws StoreFailure if a file that is to be added cannot be read
   */
  public static void requireNew(FittingRecord record, Addition addition)
      throws BadInput, StoreFailure {
    if (addition.kind() != EntryKind.STAND) {
      return;
    }
    Map<KeptFile.Role, List<String>> added = digests(record, addition);
    Optional<Entry> same =
        byNumber(record).stream()
            .filter(e -> addition.corrects().filter(c -> c.number() == e.number()).isEmpty())
            .filter(e -> !recordings(e).isEmpty() && digests(record, e).equals(added))
            .findFirst();
    if (same.isPresent()) {
      throw new BadInput(
          Problem.at(
              Place.of(record.code().text()),
              Keeping.EXACT_DOUBLE,
              Argument.count(same.get().number())));
    }
  }

  private static List<Entry> byNumber(FittingRecord record) {
    return record.entries().stream()
        .filter(e -> e.kind() == EntryKind.STAND && record.correctionOf(e).isEmpty())
        .toList();
  }

  private static List<KeptFile> recordings(Entry entry) {
    return entry.files().stream().filter(f -> f.is() == KeptFile.Role.RECORDING).toList();
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
          Argument reason = Argument.text(Reason.of(e));
          throw new StoreFailure(
              Problem.at(Place.of(record.code().text()), Keeping.CANNOT_WRITE, reason));
        }
      }
    }
    return digests;
  }

  private static boolean decides(KeptFile.Role is) {
    return is == KeptFile.Role.RECORDING || is == KeptFile.Role.SHEET;
  }
}
