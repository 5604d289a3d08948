package caryatid.usecase;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.views.RecordView;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which step of the job is proposed next; any other may be taken. */
public final class NextStep {
  /** The steps in the order in which they usually come. */
  private static final List<EntryKind> ORDER =
      List.of(
          EntryKind.COMPONENTS,
          EntryKind.ASSESSMENT,
          EntryKind.BENCH_ALIGNMENT,
          EntryKind.LEG_LENGTH,
          EntryKind.STAND,
          EntryKind.WALKING,
          EntryKind.FOOTWEAR,
          EntryKind.CLOSING);

  private NextStep() {}

  /** The first step of which the record has no entry; empty where it has one of each. */
  public static Optional<EntryKind> of(RecordView view) {
    Set<EntryKind> there = EnumSet.noneOf(EntryKind.class);
    view.valid().forEach((Entry entry) -> there.add(entry.kind()));
    return ORDER.stream().filter(kind -> !there.contains(kind)).findFirst();
  }
}
