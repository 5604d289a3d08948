package caryatid.views;

import caryatid.entry.Entry;
import caryatid.entry.LegLength;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Finds legs that differ by more than they are meant to. */
final class LegDifference {
  private LegDifference() {}

  /**
   * What is open: the landmark of the latest comparison that differs most.
   *
   * @param valid the entries that no other takes the place of, in order of time
   */
  static Optional<Remark> of(List<Entry> valid) {
    return Entry.latest(
            valid, e -> e.content(LegLength.class).filter(LegLength::comparesHeights).isPresent())
        .filter(e -> !Acceptances.isAccepted(valid, e.number()))
        .flatMap(e -> e.content(LegLength.class).flatMap(length -> of(e.number(), length)));
  }

  private static Optional<Remark> of(int entry, LegLength length) {
    return length.notAsIntended().stream()
        .findFirst()
        .map(
            row ->
                Remark.of(
                    OpenIssue.LEGS_DIFFER,
                    Argument.count(entry),
                    Argument.text(row.landmark()),
                    mm(row.leftMm().subtract(row.rightMm()).abs()),
                    mm(length.intendedShorteningMm().orElse(BigDecimal.ZERO))));
  }

  private static Argument mm(BigDecimal value) {
    return Argument.of(value.doubleValue(), Unit.MM);
  }
}
