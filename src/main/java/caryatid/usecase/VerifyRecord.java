package caryatid.usecase;

import caryatid.entry.Entry;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.store.Store;
import java.util.List;
import java.util.Optional;

/** Checks every byte of a record against its sum. */
public final class VerifyRecord {
  private VerifyRecord() {}

  /** What verifying a record found. */
  public sealed interface Verified {}

  /**
   * A record in good order.
   *
   * @param entries how many it has
   * @param headDigest SHA-512 that changes if any byte of any entry changes, hexadecimal
   */
  public record Sound(int entries, String headDigest) implements Verified {}

  /**
   * A record whose bytes are in good order, of which this version of the program cannot read all.
   *
   * @param entries how many it has
   * @param headDigest SHA-512 that changes if any byte of any entry changes, hexadecimal
   * @param problems why which entries cannot be read
   */
  public record NotRead(int entries, String headDigest, List<Problem> problems)
      implements Verified {
    public NotRead {
      problems = List.copyOf(problems);
    }
  }

  /**
   * A record that was erased; what is left of it is in good order.
   *
   * @param erasure the entry that says when, by whom and why
   */
  public record Erased(Entry erasure) implements Verified {}

  /**
   * A damaged record.
   *
   * @param problems what is wrong, file by file
   */
  public record Damaged(List<Problem> problems) implements Verified {
    public Damaged {
      problems = List.copyOf(problems);
    }
  }

  /**
   * Verifies a record.
   *
   * @throws BadInput if there is no such record
   * @throws StoreFailure if another program is writing to it
   */
  public static Verified run(Records records, String code) throws BadInput, StoreFailure {
    Store store = records.store();
    RecordCode record = RecordCode.of(code);
    List<Problem> found = store.verify(record);
    if (!found.isEmpty()) {
      return new Damaged(found);
    }
    Optional<Entry> erasure = store.erasure(record);
    if (erasure.isPresent()) {
      return new Erased(erasure.get());
    }
    FittingRecord read = store.read(record);
    return read.notShown().isEmpty()
        ? new Sound(read.size(), read.headDigest())
        : new NotRead(read.size(), read.headDigest(), read.notShown());
  }
}
