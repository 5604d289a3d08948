package caryatid.usecase;

import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.views.Comparison;
import caryatid.views.LostEntryRemark;
import java.util.List;

/** Compares two states of a record. */
public final class CompareStates {
  private CompareStates() {}

  /**
   * What differs.
   *
   * @param comparison the differences
   * @param lost which entries cannot be read, so that a state may be another than it seems
   * @param damage what is damaged, and what cannot be read
   */
  public record Compared(Comparison comparison, List<Remark> lost, List<Problem> damage) {
    public Compared {
      lost = List.copyOf(lost);
      damage = List.copyOf(damage);
    }
  }

  /**
   * Compares two states.
   *
   * @param from number of the entry that ends the earlier one
   * @param to number of the entry that ends the later one
   * @throws BadInput if there is no such record or entry, or it cannot be read; what is damaged is
   *     named first
   */
  public static Compared run(Records records, String code, int from, int to) throws BadInput {
    FittingRecord record = records.store().read(RecordCode.of(code));
    try {
      Comparison comparison = Comparison.of(record, from, to);
      return new Compared(comparison, LostEntryRemark.of(record), record.notShown());
    } catch (BadInput e) {
      throw Records.damageFirst(record, e);
    }
  }
}
