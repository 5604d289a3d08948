package caryatid.web.page;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;

/**
 * When an entry was, as it stands in a form: the time at which it is kept, unless it is changed.
 */
public final class TypedTime {
  /** The name of its field. */
  static final String AT = "entry-at";

  /** What stood in the field when the form was made. */
  private static final String SHOWN = "entry-at-shown";

  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 9999;

  private static final DateTimeFormatter MINUTES =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmxxx", Locale.ROOT);

  private TypedTime() {}

  /** What was typed instead of the time that stood there. */
  private static Optional<String> changed(TypedForm typed) {
    return typed.text(AT).filter(text -> !Optional.of(text).equals(typed.text(SHOWN)));
  }

  /** The time that was typed; empty if none was, or it is none. */
  public static Optional<OffsetDateTime> of(TypedForm typed) {
    return changed(typed).flatMap(TypedTime::read);
  }

  /** What was typed and is no time with an offset from UTC. */
  public static Optional<String> unreadable(TypedForm typed) {
    return changed(typed).filter(text -> read(text).isEmpty());
  }

  private static Optional<OffsetDateTime> read(String text) {
    try {
      OffsetDateTime time =
          OffsetDateTime.parse(text.strip().replaceFirst(" +", "T").replace(" ", ""));
      boolean known = time.getYear() >= FIRST_YEAR && time.getYear() <= LAST_YEAR;
      return known ? Optional.of(time) : Optional.empty();
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** What stands in the field, and the hidden one that tells whether it was changed. */
  static void inputs(Markup out, TypedForm typed, OffsetDateTime now, boolean bad) {
    String shown = now.format(MINUTES);
    out.open(
        "input",
        "id",
        AT,
        "name",
        AT,
        "type",
        "text",
        "class",
        "when",
        "autocomplete",
        "off",
        "aria-describedby",
        AT + "-hint",
        bad ? "aria-invalid" : "",
        "true",
        "value",
        changed(typed).orElse(shown));
    out.open("input", "type", "hidden", "name", SHOWN, "value", shown);
  }
}
