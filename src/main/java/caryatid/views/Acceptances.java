package caryatid.views;

import caryatid.entry.Acceptance;
import caryatid.entry.Entry;
import java.util.List;
import java.util.OptionalInt;

/** What was accepted as it is; an acceptance that names no entry applies to none. */
final class Acceptances {
  private Acceptances() {}

  /** Whether something of an entry was accepted after it was added. */
  static boolean isAccepted(List<Entry> valid, int entry) {
    OptionalInt number = OptionalInt.of(entry);
    return valid.stream()
        .filter(e -> e.number() > entry)
        .flatMap(e -> e.content(Acceptance.class).stream())
        .anyMatch(a -> a.stand().equals(number) || a.entry().equals(number));
  }
}
