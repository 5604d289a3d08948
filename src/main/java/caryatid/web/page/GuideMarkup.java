package caryatid.web.page;

import caryatid.wording.Wording;
import java.util.List;
import java.util.Map;

/** Pages that lead through a measurement, one step at a time. */
public final class GuideMarkup {
  private final Wording wording;
  private final Markup out = new Markup();

  public GuideMarkup(Wording wording) {
    this.wording = wording;
  }

  /** What is asked in a step. */
  public Markup markup() {
    return out;
  }

  /** What to do next, in one sentence. */
  public GuideMarkup next(String sentence) {
    out.element("p", sentence, "class", "next-step", "role", "status");
    return this;
  }

  /** What is wrong with what was typed or sent. */
  public GuideMarkup faults(List<String> faults) {
    if (!faults.isEmpty()) {
      out.open("div", "class", "fault", "role", "alert", "id", "faults");
      faults.forEach(fault -> out.element("p", fault));
      out.close("div");
    }
    return this;
  }

  /** Lines of what was found. */
  public GuideMarkup lines(List<String> lines) {
    out.open("ul", "class", "facts");
    lines.forEach(line -> out.element("li", line));
    out.close("ul");
    return this;
  }

  /** Begins a form. */
  public GuideMarkup form(String action) {
    out.open("form", "method", "post", "action", action, "autocomplete", "off", "class", "entry");
    return this;
  }

  /** What the form sends with what is typed. */
  public GuideMarkup hidden(String name, String value) {
    out.open("input", "type", "hidden", "name", name, "value", value);
    return this;
  }

  /** Words with a label. */
  public GuideMarkup words(String name, String key, Map<String, String> typed) {
    return field(name, wording.word(key), "words", "", typed);
  }

  /** A number with a label and a unit. */
  public GuideMarkup number(String name, String key, String unit, Map<String, String> typed) {
    return numberLabelled(name, wording.word(key), unit, typed);
  }

  /** A number with a label that is already in words. */
  public GuideMarkup numberLabelled(
      String name, String label, String unit, Map<String, String> typed) {
    return field(name, label, "number", unit, typed);
  }

  private GuideMarkup field(
      String name, String label, String look, String unit, Map<String, String> typed) {
    out.open("div", "class", "field").element("label", label, "for", name);
    out.open(
        "input",
        "id",
        name,
        "name",
        name,
        "type",
        "text",
        "class",
        look,
        look.equals("number") ? "inputmode" : "",
        "decimal",
        "autocomplete",
        "off",
        "value",
        typed.getOrDefault(name, ""));
    if (!unit.isEmpty()) {
      out.element("span", unit, "class", "unit");
    }
    out.close("div");
    return this;
  }

  /** A choice with a label; codes and keys of their words in turn. */
  public GuideMarkup choice(String name, String key, Map<String, String> typed, String... options) {
    out.open("div", "class", "field").element("label", wording.word(key), "for", name);
    out.open("select", "id", name, "name", name);
    for (int i = 0; i < options.length; i += 2) {
      boolean chosen = options[i].equals(typed.getOrDefault(name, ""));
      out.element(
          "option",
          wording.word(options[i + 1]),
          "value",
          options[i],
          chosen ? "selected" : "",
          "");
    }
    out.close("select").close("div");
    return this;
  }

  /** Ends a form with a button that is not the usual next one. */
  public GuideMarkup otherwise(String key) {
    out.element("button", wording.word(key)).close("form");
    return this;
  }

  /** Ends a form with its button. */
  public GuideMarkup send(String key) {
    out.element("button", wording.word(key), "class", "strong").close("form");
    return this;
  }

  /** A heading. */
  public GuideMarkup heading(String words) {
    out.element("h2", words);
    return this;
  }

  /** A note. */
  public GuideMarkup note(String words) {
    out.element("p", words, "class", "note");
    return this;
  }

  /** A link that looks like a button. */
  public GuideMarkup link(String href, String words) {
    out.open("p").element("a", words, "class", "button", "href", href).close("p");
    return this;
  }
}
