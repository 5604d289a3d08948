package caryatid.web.page;

import caryatid.wording.Wording;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * When an entry was, as it stands in a form: the time at which it is kept, unless it is changed.
 */
public final class TypedTime {
  /** The name of its field. */
  public static final String AT = "entry-at";

  /** What stood in the field when the form was made. */
  public static final String SHOWN = "entry-at-shown";

  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 9999;

  private static final DateTimeFormatter MINUTES =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmxxx", Locale.ROOT);

  private TypedTime() {}

  /**
   * What stands in a field that nobody has typed into.
   *
   * @param hint what becomes of it if it is left as it is
   * @param prefix of the ids, where a page has several forms
   */
  public record Untouched(OffsetDateTime at, String hint, String prefix) {
    public Untouched(OffsetDateTime at, String hint) {
      this(at, hint, "");
    }
  }

  /** What was typed instead of the time that stood there. */
  public static Optional<String> changed(TypedForm typed) {
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

  /** Whether a text is no time with an offset from UTC. */
  public static boolean isNone(String text) {
    return read(text).isEmpty();
  }

  private static Optional<OffsetDateTime> read(String text) {
    try {
      OffsetDateTime time = OffsetDateTime.parse(compact(text));
      boolean known = time.getYear() >= FIRST_YEAR && time.getYear() <= LAST_YEAR;
      return known ? Optional.of(time) : Optional.empty();
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** A time as files write it; what is none stays as it is. */
  public static String plain(String typed) {
    return isNone(typed) ? typed : compact(typed);
  }

  private static String compact(String typed) {
    return typed.strip().replaceFirst(" +", "T").replace(" ", "");
  }

  /** The field with its label, its hint and what is wrong with it. */
  public static void field(
      Markup out, Untouched shown, TypedForm typed, FieldFaults faults, Wording wording) {
    List<String> wrong = faults.at(AT);
    out.open("div", "class", "field");
    out.element("label", wording.word("Web.when"), "for", shown.prefix() + AT);
    inputs(out, typed, shown, !wrong.isEmpty());
    out.element("span", shown.hint(), "class", "note", "id", shown.prefix() + AT + "-hint");
    if (!wrong.isEmpty()) {
      out.open("div", "class", "fault", "id", shown.prefix() + AT + "-fault");
      wrong.forEach(fault -> out.element("p", fault));
      out.close("div");
    }
    out.close("div");
  }

  /** What stands in the field, and the hidden one that tells whether it was changed. */
  private static void inputs(Markup out, TypedForm typed, Untouched untouched, boolean bad) {
    String shown = untouched.at().format(MINUTES);
    out.open(
        "input",
        "id",
        untouched.prefix() + AT,
        "name",
        AT,
        "type",
        "text",
        "class",
        "when",
        "autocomplete",
        "off",
        "aria-describedby",
        untouched.prefix() + AT + "-hint",
        bad ? "aria-invalid" : "",
        "true",
        "value",
        changed(typed).orElse(shown));
    out.open("input", "type", "hidden", "name", SHOWN, "value", shown);
  }
}
