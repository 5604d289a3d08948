package caryatid.web.page;

import caryatid.entry.form.Answers;
import caryatid.entry.form.Field;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.usecase.SuggestedRows;
import caryatid.wording.EntryWords;
import caryatid.wording.Wording;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The fields of a form: their words, units, choices and what is wrong, as HTML. */
final class FormMarkup {
  /** Rows that stand ready beside those that are offered or typed into. */
  private static final int FREE_ROWS = 2;

  private static final double HIGHEST_OF_SCALES = 10;

  /** Settings of the bench, some of them distances with a direction. */
  private static final String ITEMS = "items";

  /** What of an item is typed once if ever, and folded. */
  private static final Set<String> FOLDED =
      Set.of("lowest", "highest", "step", "deg-per-turn", "note");

  private final Wording wording;
  private final EntryWords words;
  private final TypedForm typed;
  private final FieldFaults faults;
  private final RowOffers offers;
  private final EntryOffers entries;
  private final String prefix;
  private final Markup out = new Markup();

  private FormMarkup(
      Wording wording,
      TypedForm typed,
      FieldFaults faults,
      RowOffers offers,
      EntryOffers entries,
      String prefix) {
    this.entries = entries;
    this.prefix = prefix;
    this.wording = wording;
    this.words = new EntryWords(wording);
    this.typed = typed;
    this.faults = faults;
    this.offers = offers;
  }

  /**
   * The fields with what was typed into them before.
   *
   * @param prefix of their ids, where a page has several forms
   */
  static Markup fields(
      Form form,
      Wording wording,
      TypedForm typed,
      FieldFaults faults,
      RowOffers offers,
      EntryOffers entries,
      String prefix) {
    FormMarkup markup = new FormMarkup(wording, typed, faults, offers, entries, prefix);
    for (Field field : form.fields()) {
      if (field.type() instanceof FieldType.Rows rows) {
        markup.rows(field, rows.form());
      } else if (!(field.type() instanceof FieldType.Computed)) {
        markup.field(field, field.key(), "", field.required());
      }
    }
    return markup.out;
  }

  private void rows(Field field, Form form) {
    out.open("fieldset", "class", "rows").element("legend", words.label(field.key()));
    if (field.key().equals(ITEMS)) {
      out.element("p", wording.word("Web.otherWay"), "class", "note");
    }
    if (!offers.rows().isEmpty()) {
      out.element("p", wording.word("Web.emptyRows"), "class", "note");
    }
    faults(field.key());
    int shown = Math.max(offers.rows().size(), typed.rows(field.key())) + FREE_ROWS;
    for (int i = 1; i <= Math.min(shown, TypedForm.MOST_ROWS); i++) {
      row(field, form, i);
    }
    out.close("fieldset");
  }

  private void row(Field rows, Form form, int number) {
    String key = rows.key();
    boolean offered = number <= offers.rows().size();
    // Rows that stand ready and may stay empty ask for nothing.
    boolean leads = rows.required() && offers.rows().isEmpty() && number == 1;
    boolean asks = leads || (!offered && number <= typed.rows(key));
    String name = TypedForm.row(key, number);
    String first = form.fields().get(0).key();
    String title = offers.offered(number, first).orElse(words.label(key) + " " + number);
    String look = offered && asked(form, number) == 1 ? "row one" : "row";
    out.open("fieldset", "class", look).element("legend", title);
    for (Field field : form.fields()) {
      if (offers.isOffered(number, field.key())) {
        known(field, name + field.key(), number);
      } else if (!isFolded(key, field) && isShown(field, number)) {
        field(field, name + field.key(), unit(number), asks && field.required());
      }
    }
    folded(key, form, number);
    out.close("fieldset");
  }

  private void folded(String key, Form form, int number) {
    String name = TypedForm.row(key, number);
    List<Field> fields =
        form.fields().stream()
            .filter(field -> isFolded(key, field) && isShown(field, number))
            .toList();
    if (fields.isEmpty()) {
      return;
    }
    boolean used =
        fields.stream()
            .map(field -> name + field.key())
            .anyMatch(each -> !typed.text(each).orElse("").isEmpty() || !faults.at(each).isEmpty());
    out.open("details", "class", "more", used ? "open" : "", "");
    out.element("summary", wording.word("Web.moreOfItem"));
    fields.forEach(field -> field(field, name + field.key(), unit(number), false));
    out.close("details");
  }

  private static boolean isFolded(String rows, Field field) {
    return rows.equals(ITEMS) && FOLDED.contains(field.key());
  }

  private boolean isShown(Field field, int row) {
    return !(field.type() instanceof FieldType.Computed)
        && (row > offers.rows().size() || isAsked(field, row));
  }

  private boolean isAsked(Field field, int row) {
    return !(field.type() instanceof FieldType.Computed)
        && !offers.isOffered(row, field.key())
        && SuggestedRows.isAsked(offers.answers().get(row - 1), field);
  }

  private long asked(Form form, int row) {
    return form.fields().stream().filter(field -> isAsked(field, row)).count();
  }

  /** The unit that an offered row has in a field of its own stands beside its numbers. */
  private String unit(int row) {
    return offers.offered(row, "unit").orElse("");
  }

  private void known(Field field, String name, int row) {
    String known = offers.offered(row, field.key()).orElseThrow();
    out.open("input", "type", "hidden", "name", name, "value", typed.text(name).orElse(known));
    faults(name);
  }

  private void field(Field field, String name, String unit, boolean required) {
    String id = prefix + id(name);
    out.open("div", "class", "field");
    String label = words.label(field.key()) + (required ? " *" : "");
    if (field.type() instanceof FieldType.YesNo) {
      options(name, label, Map.of("yes", "Answer.yes", "no", "Answer.no"));
    } else {
      out.element("label", label, "for", id);
      input(field, name, id, unit.isEmpty() ? EntryWords.unit(field.key()) : unit);
    }
    faults(name);
    out.close("div");
  }

  private void input(Field field, String name, String id, String unit) {
    String text = typed.text(name).or(() -> typed.text(name + TypedForm.OWN_WORDS)).orElse("");
    String bad = faults.at(name).isEmpty() ? "" : "aria-invalid";
    String describes = faults.at(name).isEmpty() ? "" : "aria-describedby";
    Map<String, String> choice = choice(field);
    if (!choice.isEmpty()) {
      out.open("select", "id", id, "name", name, bad, "true", describes, id + "-fault");
      option("", "", text);
      choice.forEach((code, words) -> option(code, words, text));
      out.close("select");
      return;
    }
    boolean number = field.type() instanceof FieldType.Number;
    String type = field.type() instanceof FieldType.Day ? "date" : "text";
    out.open(
        "input",
        "id",
        id,
        "name",
        name,
        "type",
        type,
        "class",
        number ? "number" : "words",
        number ? "inputmode" : "",
        "decimal",
        "autocomplete",
        "off",
        bad,
        "true",
        describes,
        id + "-fault",
        "value",
        text);
    String behind = unit.isEmpty() ? scale(field) : unit;
    if (!behind.isEmpty() && number) {
      out.element("span", behind, "class", "unit");
    }
  }

  /** From where to where a score goes; nothing of other numbers. */
  private static String scale(Field field) {
    return field.type() instanceof FieldType.Number number && number.highest() <= HIGHEST_OF_SCALES
        ? Math.round(number.lowest()) + " \u2013 " + Math.round(number.highest())
        : "";
  }

  /** What a field is chosen from, words by codes; nothing where something is typed. */
  private Map<String, String> choice(Field field) {
    if (!(field.type() instanceof FieldType.Choice choice)) {
      return entries.byField().getOrDefault(field.key(), Map.of());
    }
    Map<String, String> codes = new LinkedHashMap<>();
    choice.words().forEach(code -> codes.put(code, choiceWord(field.key(), code)));
    return codes;
  }

  private String choiceWord(String key, String code) {
    return words.value(key, new Answers.Value.Words(code));
  }

  private void option(String value, String word, String chosen) {
    out.element("option", word, "value", value, value.equals(chosen) ? "selected" : "", "");
  }

  private void options(String name, String label, Map<String, String> answers) {
    out.open("fieldset", "class", "choice").element("legend", label);
    Optional<String> chosen = typed.text(name);
    for (String answer : answers.keySet().stream().sorted(Comparator.reverseOrder()).toList()) {
      String id = prefix + id(name) + "-" + answer;
      boolean checked = chosen.equals(Optional.of(answer));
      out.open(
          "input",
          "type",
          "radio",
          "id",
          id,
          "name",
          name,
          "value",
          answer,
          checked ? "checked" : "",
          "");
      out.element("label", wording.word(answers.get(answer)), "for", id);
    }
    out.close("fieldset");
  }

  private void faults(String name) {
    if (!faults.at(name).isEmpty()) {
      out.open("div", "class", "fault", "id", prefix + id(name) + "-fault");
      faults.at(name).forEach(fault -> out.element("p", fault));
      out.close("div");
    }
  }

  static String id(String name) {
    return name.replaceAll("[^A-Za-z0-9]+", "-").toLowerCase(Locale.ROOT);
  }
}
