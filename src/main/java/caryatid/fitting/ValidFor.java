package caryatid.fitting;

import caryatid.entry.KneeLock;
import caryatid.entry.Named;
import caryatid.entry.Stood;
import caryatid.remark.Argument;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether a stand was of the kind that a target is valid for. */
final class ValidFor {
  private ValidFor() {}

  /**
   * Whether the stand's footwear or its knee's mode is what a target is valid for. A knee's lock
   * and its mode stand in one, and either may be what is asked for.
   */
  static boolean isSaid(Named<KneeLock> wanted, Stood stood) {
    Optional<Named<KneeLock>> knee = stood.kneeMode();
    if (wanted.code().isPresent()) {
      return knee.filter(k -> k.code().equals(wanted.code()))
          .filter(k -> wanted.text().isBlank() || isSame(wanted.text(), k.text()))
          .isPresent();
    }
    return Stream.concat(stood.footwear().stream(), knee.map(Named::text).stream())
        .anyMatch(text -> isSame(wanted.text(), text));
  }

  private static boolean isSame(String one, String other) {
    return Named.fold(one).equals(Named.fold(other));
  }

  /** How the wearer stood. */
  static List<Argument> how(Stood stood) {
    List<Argument> how = new ArrayList<>();
    stood.footwear().map(Argument::text).ifPresent(how::add);
    stood.kneeMode().map(ValidFor::argument).ifPresent(how::add);
    return how;
  }

  /** The lock's term, then the words. */
  static Argument argument(Named<KneeLock> name) {
    List<Argument> parts = new ArrayList<>();
    name.code().map(Argument::term).ifPresent(parts::add);
    if (!name.text().isBlank()) {
      parts.add(Argument.text(name.text()));
    }
    return Argument.list(parts);
  }
}
