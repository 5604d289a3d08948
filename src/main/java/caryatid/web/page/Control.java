package caryatid.web.page;

import java.util.List;
import java.util.Map;

/** Single controls of a form with their labels, units and what is wrong with them. */
final class Control {
  private final Markup out;
  private final Map<String, String> typed;
  private final Map<String, String> before;
  private final FieldFaults faults;

  /**
   * @param typed what was typed
   * @param before what was typed for the stand before, offered to be taken over
   */
  Control(Markup out, Map<String, String> typed, Map<String, String> before, FieldFaults faults) {
    this.out = out;
    this.typed = typed;
    this.before = before;
    this.faults = faults;
  }

  /** A label and a number, its unit behind it. */
  void number(String name, String label, String unit) {
    out.open("div", "class", "field").element("label", label, "for", id(name));
    bareNumber(name, "");
    out.element("span", unit, "class", "unit");
    faults(name);
    out.close("div");
  }

  /** A number, labelled elsewhere or by the words given. */
  void bareNumber(String name, String label) {
    String earlier = before.getOrDefault(name, "");
    input(name, "number", label, earlier, "inputmode", "decimal");
  }

  /** A label and words. */
  void words(String name, String label) {
    out.open("div", "class", "field").element("label", label, "for", id(name));
    input(name, "words", "", before.getOrDefault(name, ""), "", "");
    faults(name);
    out.close("div");
  }

  private void input(
      String name, String kind, String label, String earlier, String mode, String value) {
    boolean bad = !faults.at(name).isEmpty();
    out.open(
        "input",
        "id",
        id(name),
        "name",
        name,
        "type",
        "text",
        "class",
        kind,
        mode,
        value,
        label.isEmpty() ? "" : "aria-label",
        label,
        earlier.isEmpty() ? "" : "data-before",
        earlier,
        earlier.isEmpty() ? "" : "placeholder",
        earlier,
        "autocomplete",
        "off",
        bad ? "aria-invalid" : "",
        "true",
        bad ? "aria-describedby" : "",
        id(name) + "-fault",
        "value",
        typed.getOrDefault(name, ""));
  }

  /** A label and a choice. */
  void choice(String name, String label, List<String> codes, List<String> words) {
    out.open("div", "class", "field").element("label", label, "for", id(name));
    bareChoice(name, "", codes, words);
    faults(name);
    out.close("div");
  }

  /** A choice, labelled by the words given; the first is chosen where none was. */
  void bareChoice(String name, String label, List<String> codes, List<String> words) {
    String chosen = typed.getOrDefault(name, "");
    out.open("select", "id", id(name), "name", name, label.isEmpty() ? "" : "aria-label", label);
    for (int i = 0; i < codes.size(); i++) {
      boolean selected = codes.get(i).equals(chosen);
      out.element("option", words.get(i), "value", codes.get(i), selected ? "selected" : "", "");
    }
    if (!chosen.isEmpty() && !codes.contains(chosen)) {
      out.element("option", chosen, "value", chosen, "selected", "");
    }
    out.close("select");
  }

  /** What is wrong with a field. */
  void faults(String name) {
    if (!faults.at(name).isEmpty()) {
      out.open("div", "class", "fault", "id", id(name) + "-fault");
      faults.at(name).forEach(fault -> out.element("p", fault));
      out.close("div");
    }
  }

  static String id(String name) {
    return FormMarkup.id(name);
  }
}
