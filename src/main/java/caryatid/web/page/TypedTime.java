package caryatid.web.page;

import caryatid.remark.Argument;
import caryatid.wording.Wording;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * When an entry was, as it stands in a form: the time at which it is kept, unless it is changed.
 */
public final class TypedTime {
  /** The name of its field. */
  public static final String AT = "entry-at";

  /** What stands in the field if nobody changes it. */
  public static final String SHOWN = "entry-at-shown";

  private TypedTime() {}

  /**
   * What is known before anything is typed into a form.
   *
   * @param now the time
   * @param before what was typed last on this visit; empty if nothing was
   */
  public record Offered(OffsetDateTime now, Optional<String> before) {}

  /**
   * The field as it is shown.
   *
   * @param hint what becomes of it if it is left as it is
   * @param prefix of the ids, where a page has several forms
   */
  public record TimeField(Offered offered, String hint, String prefix) {
    public TimeField(Offered offered, String hint) {
      this(offered, hint, "");
    }

    /** Only the first form of a page says by which clock it is. */
    private boolean first() {
      return prefix.isEmpty();
    }
  }

  /** What was typed instead of the time that stood there. */
  public static Optional<String> changed(TypedForm typed) {
    return typed.text(AT).filter(text -> !Optional.of(text).equals(typed.text(SHOWN)));
  }

  /** The time that was typed; empty if none was, or it is none. */
  public static Optional<OffsetDateTime> of(TypedForm typed, LocalTimes times) {
    return changed(typed).flatMap(times::read);
  }

  /** Why what was typed is no time; empty if it is one, or nothing was typed. */
  public static Optional<String> fault(TypedForm typed, LocalTimes times) {
    return changed(typed).flatMap(times::fault);
  }

  /** The field with its label, its hint and what is wrong with it. */
  public static void field(
      Markup out, TimeField shown, TypedForm typed, FieldFaults faults, Wording wording) {
    LocalTimes times = LocalTimes.here(wording);
    List<String> wrong = faults.at(AT);
    out.open("div", "class", "field");
    out.element("label", wording.word("Web.when"), "for", shown.prefix() + AT);
    String value = value(typed, shown.offered(), times);
    inputs(out, value, shown, times.show(shown.offered().now()), !wrong.isEmpty());
    out.element(
        "span", hint(value, shown, wording), "class", "note", "id", shown.prefix() + AT + "-hint");
    if (!wrong.isEmpty()) {
      out.open("div", "class", "fault", "id", shown.prefix() + AT + "-fault");
      wrong.forEach(fault -> out.element("p", fault));
      out.close("div");
    }
    out.close("div");
  }

  /** A form that was sent has its own time; a new one begins with what was typed last. */
  private static String value(TypedForm typed, Offered offered, LocalTimes times) {
    boolean sent = typed.text(SHOWN).isPresent();
    return changed(typed)
        .or(() -> sent ? Optional.empty() : offered.before())
        .orElseGet(() -> times.show(offered.now()));
  }

  private static String hint(String value, TimeField shown, Wording wording) {
    boolean before = shown.offered().before().equals(Optional.of(value));
    String says = before ? wording.word("Web.whenBefore") : shown.hint();
    String offset = shown.offered().now().getOffset().getId();
    return shown.first()
        ? says
            + " "
            + wording.fill("Web.whenClock", Argument.text("Z".equals(offset) ? "" : offset))
        : says;
  }

  /** What stands in the field, and the hidden one that tells whether it was changed. */
  private static void inputs(
      Markup out, String value, TimeField field, String untouched, boolean bad) {
    out.open(
        "input",
        "id",
        field.prefix() + AT,
        "name",
        AT,
        "type",
        "text",
        "class",
        "when",
        "autocomplete",
        "off",
        "aria-describedby",
        field.prefix() + AT + "-hint",
        bad ? "aria-invalid" : "",
        "true",
        "value",
        value);
    out.open("input", "type", "hidden", "name", SHOWN, "value", untouched);
  }
}
