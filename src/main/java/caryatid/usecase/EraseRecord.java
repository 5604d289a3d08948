package caryatid.usecase;

import caryatid.entry.Erasure;
import caryatid.fitting.Addition;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/** Erases a record for good; only when, by whom and why is left. */
public final class EraseRecord {
  private EraseRecord() {}

  /**
   * What is left of it.
   *
   * @param at when; now if empty
   * @param by initials of who does it
   * @param why the reason
   * @param sure whether the reason says nothing about who the wearer is, whatever it looks like
   */
  public record ErasureReason(Optional<OffsetDateTime> at, String by, String why, boolean sure) {}

  /**
   * Erases a record.
   *
   * @throws BadInput if there is no such record, it was erased before, or what is to be left of it
   *     cannot be kept
   * @throws StoreFailure if another program is writing to it, or it cannot be erased
   */
  public static void run(Records records, String code, ErasureReason reason)
      throws BadInput, StoreFailure {
    OffsetDateTime now = records.now();
    Addition erasure =
        new Addition(
                reason.at().orElse(now),
                reason.by(),
                Optional.empty(),
                new Erasure(reason.why(), 0),
                List.of())
            .checked(now);
    if (!reason.sure()) {
      erasure.anonymous();
    }
    records.store().erase(RecordCode.of(code), erasure.at(), erasure.by(), reason.why());
    records.removeDrafts(RecordCode.of(code));
  }
}
