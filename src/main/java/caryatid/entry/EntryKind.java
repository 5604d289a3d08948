package caryatid.entry;

import caryatid.remark.Coded;
import java.util.Arrays;
import java.util.Optional;

/** The kinds of entries of a fitting record: the stages of a fitting and what accompanies them. */
public enum EntryKind implements Coded {
  /** The first entry: whose prosthesis it is. */
  OPENING("EntryKind.OPENING", "opening"),
  /** How the wearer is and sits in the socket, before any screw is turned. */
  ASSESSMENT("EntryKind.BEFORE_ANY_SCREW", "before-any-screw"),
  BENCH_ALIGNMENT("EntryKind.BENCH_ALIGNMENT", "bench-alignment"),
  /** The components and the limits their makers state. */
  COMPONENTS("EntryKind.COMPONENTS", "components"),
  LEG_LENGTH("EntryKind.LENGTH", "length"),
  /** A stand on the plate, with its files. */
  STAND("EntryKind.STAND", "stand"),
  WALKING("EntryKind.WALKING", "walking"),
  FOOTWEAR("EntryKind.FOOTWEAR", "footwear"),
  /** Something accepted as it is, and why. */
  ACCEPTED("EntryKind.ACCEPTED", "accepted"),
  /** The wearer's own attempts at setting an adjustable part. */
  OWN_SETTING("EntryKind.OWN_SETTING", "own-setting"),
  /** How a visit ends: what the wearer says, and when the next visit is. */
  CLOSING("EntryKind.CLOSING", "closing"),
  NOTE("EntryKind.NOTE", "note"),
  /** That the record was sent to a clinic's system; made by sending alone. */
  SENDING("EntryKind.SENDING", "sent"),
  /** What is left of a record that was erased; made by erasing alone. */
  ERASURE("EntryKind.ERASURE", "erasure");

  private final String code;
  private final String key;

  EntryKind(String code, String key) {
    this.code = code;
    this.key = key;
  }

  @Override
  public String code() {
    return code;
  }

  /**
   * Its name in files and at the command line, for example {@code bench-alignment}; never changed.
   */
  public String key() {
    return key;
  }

  /** Whether a person adds such entries to a record that is open; of an opening, a correction. */
  public boolean isAdded() {
    return this != ERASURE && this != SENDING;
  }

  /** Whether such an entry is made while the wearer is there. */
  public boolean isOfAVisit() {
    return switch (this) {
      case ASSESSMENT, LEG_LENGTH, STAND, WALKING, OWN_SETTING, CLOSING -> true;
      default -> false;
    };
  }

  /** The kind of a name. */
  public static Optional<EntryKind> of(String key) {
    return Arrays.stream(values()).filter(k -> k.key().equals(key)).findFirst();
  }
}
