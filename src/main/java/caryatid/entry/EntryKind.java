package caryatid.entry;

import caryatid.entry.form.Form;
import caryatid.entry.form.Forms;
import caryatid.remark.Coded;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The kinds of entries of a fitting record: the stages of a fitting and what goes beside them. */
public enum EntryKind implements Coded {
  /** The first entry: whose prosthesis it is. */
  OPENING("EntryKind.OPENING", Forms.OPENING),
  /** How the wearer is and sits in the socket, before any screw is turned. */
  BEFORE_ANY_SCREW("EntryKind.BEFORE_ANY_SCREW", Forms.BEFORE_ANY_SCREW),
  BENCH_ALIGNMENT("EntryKind.BENCH_ALIGNMENT", Forms.BENCH_ALIGNMENT),
  /** The components and the limits their makers state. */
  COMPONENTS("EntryKind.COMPONENTS", Forms.COMPONENTS),
  LENGTH("EntryKind.LENGTH", Forms.LENGTH),
  /** A stand on the plate, with its files. */
  STAND("EntryKind.STAND", Forms.STAND),
  WALKING("EntryKind.WALKING", Forms.WALKING),
  FOOTWEAR("EntryKind.FOOTWEAR", Forms.FOOTWEAR),
  /** Something accepted as it is, and why. */
  ACCEPTED("EntryKind.ACCEPTED", Forms.ACCEPTED),
  /** The wearer's own attempts at setting an adjustable part. */
  OWN_SETTING("EntryKind.OWN_SETTING", Forms.OWN_SETTING),
  NOTE("EntryKind.NOTE", Forms.NOTE),
  /** What is left of a record that was erased; made by erasing alone. */
  ERASURE("EntryKind.ERASURE", Forms.ERASURE);

  private final String code;
  private final Form form;

  EntryKind(String code, Form form) {
    this.code = code;
    this.form = form;
  }

  @Override
  public String code() {
    return code;
  }

  /** What such an entry is asked for. */
  public Form form() {
    return form;
  }

  /** Its name in files and at the command line, for example {@code bench-alignment}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether a person adds such entries to a record that is open; of an opening, a correction. */
  public boolean isAdded() {
    return this != ERASURE;
  }

  /** The kind of a name. */
  public static Optional<EntryKind> of(String key) {
    return Arrays.stream(values()).filter(k -> k.key().equals(key)).findFirst();
  }
}
