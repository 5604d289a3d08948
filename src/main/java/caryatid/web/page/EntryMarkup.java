package caryatid.web.page;

import caryatid.entry.form.Form;
import caryatid.wording.Wording;

/** The form of an entry: who says it, what it says, and what is wrong with it. */
public final class EntryMarkup {
  /** Initials of who adds the entry. */
  public static final String BY = "by-initials";

  /** That the words say nothing about who the wearer is. */
  public static final String SURE = "is-sure";

  /** The id of a step's form, which is kept by the button at the foot of the page. */
  static final String FORM = "entry";

  /** What the record was when the form was made. */
  public static final String HEAD = "record-head";

  private final Wording wording;
  private final TypedForm typed;
  private final FieldFaults faults;
  private final String initials;
  private final String prefix;

  /**
   * @param initials those that are offered
   */
  public EntryMarkup(Wording wording, TypedForm typed, FieldFaults faults, String initials) {
    this(wording, typed, faults, initials, "");
  }

  /**
   * One of several forms on a page.
   *
   * @param initials those that are offered
   * @param prefix of its fields' ids
   */
  public EntryMarkup(
      Wording wording, TypedForm typed, FieldFaults faults, String initials, String prefix) {
    this.prefix = prefix;
    this.wording = wording;
    this.typed = typed;
    this.faults = faults;
    this.initials = initials;
  }

  /**
   * Begins the form, with what is wrong with all of it.
   *
   * @param digest what the record is
   */
  public Markup begin(String address, String digest) {
    return begin(address, digest, "");
  }

  /** Begins the form of a step, whose button stands at the foot of the page. */
  public Markup beginStep(String address, String digest) {
    return begin(address, digest, FORM);
  }

  private Markup begin(String address, String digest, String id) {
    Markup out = new Markup();
    if (!faults.isEmpty()) {
      out.open("div", "class", "fault", "role", "alert", "id", "faults", "tabindex", "-1");
      out.element("p", wording.word("Web.notKept"));
      faults.others().forEach(fault -> out.element("p", fault));
      out.close("div");
    }
    out.open(
        "form",
        id.isEmpty() ? "" : "id",
        id,
        "method",
        "post",
        "action",
        address,
        "autocomplete",
        "off",
        "class",
        "entry");
    if (!digest.isEmpty()) {
      out.open("input", "type", "hidden", "name", HEAD, "value", digest);
    }
    return out;
  }

  /** A field that is not the entry's. */
  public void own(Markup out, String name, String label, TypedForm given) {
    out.open("div", "class", "field").element("label", label + " *", "for", name);
    out.open(
        "input",
        "id",
        name,
        "name",
        name,
        "type",
        "text",
        "class",
        "words",
        "autocomplete",
        "off",
        "required",
        "",
        "value",
        given.text(name).orElse(""));
    out.close("div");
  }

  /**
   * The entry's fields.
   *
   * @param entries what a field that names an entry offers, by the field's key
   */
  public void fields(Markup out, Form form, RowOffers offers, EntryOffers entries) {
    out.add(FormMarkup.fields(form, wording, typed, faults, offers, entries, prefix));
  }

  /** When it was, who says it, and the button. */
  public void end(Markup out, String button, TypedTime.Offered time) {
    when(out, time);
    confirm(out);
    close(out, button);
  }

  /** When it was and who says it, of the form of a step. */
  public void endStep(Markup out, TypedTime.Offered time) {
    when(out, time);
    confirm(out);
    out.open("div", "class", "field");
    initials(out, wording, typed.text(BY).orElse(initials), true, prefix);
    out.close("div").close("form");
  }

  /** Where something looks like a name: that the words say nothing about who the wearer is. */
  public void confirm(Markup out) {
    if (faults.looksLikeName()) {
      out.open("div", "class", "field check");
      boolean sure = typed.text(SURE).isPresent();
      out.open(
          "input",
          "type",
          "checkbox",
          "id",
          SURE,
          "name",
          SURE,
          "value",
          "yes",
          sure ? "checked" : "",
          "");
      out.element("label", wording.word("Web.sure"), "for", SURE).close("div");
    }
  }

  /** Who says it, and the button. */
  public void close(Markup out, String button) {
    out.open("div", "class", "field");
    initials(out, wording, typed.text(BY).orElse(initials), true, prefix);
    out.element("button", button, "class", "strong").close("div").close("form");
  }

  /** The label and the field of the initials. */
  public static void initials(Markup out, Wording wording, String by, boolean required) {
    initials(out, wording, by, required, "");
  }

  private static void initials(
      Markup out, Wording wording, String by, boolean required, String prefix) {
    out.element("label", wording.word("Web.by") + " *", "for", prefix + BY);
    out.open(
        "input",
        "id",
        prefix + BY,
        "name",
        BY,
        "type",
        "text",
        "class",
        "short",
        "autocomplete",
        "off",
        required ? "required" : "",
        "",
        "value",
        by);
  }

  private void when(Markup out, TypedTime.Offered time) {
    TypedTime.TimeField shown = new TypedTime.TimeField(time, wording.word("Web.whenHint"), prefix);
    TypedTime.field(out, shown, typed, faults, wording);
  }
}
