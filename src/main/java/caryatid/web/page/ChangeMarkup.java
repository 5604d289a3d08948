package caryatid.web.page;

import caryatid.entry.SettingDirection;
import caryatid.usecase.stand.AlignmentChange;
import caryatid.usecase.stand.AlignmentChange.Changeable;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The fields of a change: what, from, to, and to what torque each fastener is secured after it. */
public final class ChangeMarkup {
  /** Which of the items is changed, by its number from 0. */
  public static final String WHAT = "change-what";

  /** That all fasteners are secured as recommended, but for those that are typed. */
  public static final String SECURED = "all-secured";

  private static final String SET = "set";

  private final Wording wording;
  private final Map<String, String> typed;
  private final FieldFaults faults;
  private final Markup out = new Markup();
  private final Control control;

  public ChangeMarkup(Wording wording, TypedForm typed, FieldFaults faults) {
    this.wording = wording;
    this.typed = typed.texts();
    this.faults = faults;
    this.control = new Control(out, this.typed, Map.of(), faults);
  }

  /** What is changed, as the first row. */
  public Markup change(List<Changeable> offered) {
    List<String> codes =
        Stream.iterate(0, i -> i < offered.size(), i -> i + 1).map(i -> "" + i).toList();
    control.choice(
        WHAT,
        word("change.what"),
        Stream.concat(Stream.of(""), codes.stream()).toList(),
        Stream.concat(Stream.of(""), offered.stream().map(this::now)).toList());
    control.number(TypedSetting.TO, word("change.to"), "mm, \u00b0");
    by(offered);
    out.open("p", "class", "note", "role", "status", "data-comes-to", "").close("p");
    return out;
  }

  /** By how much and in which direction; the script leaves those of the chosen item. */
  private void by(List<Changeable> offered) {
    control.number(TypedSetting.BY, word("change.by"), "mm, \u00b0");
    Map<SettingDirection, List<String>> items = new EnumMap<>(SettingDirection.class);
    for (int i = 0; i < offered.size(); i++) {
      for (SettingDirection one : offered.get(i).directions()) {
        items.computeIfAbsent(one, none -> new ArrayList<>()).add("" + i);
      }
    }
    String name = TypedSetting.WAY;
    String chosen = typed.getOrDefault(name, "");
    out.open("div", "class", "field").element("label", word("change.way"), "for", name);
    out.open("select", "id", name, "name", name, "data-of", WHAT);
    out.element("option", "", "value", "");
    items.forEach(
        (one, of) ->
            out.element(
                "option",
                wording.word(one),
                "value",
                one.name(),
                "data-items",
                String.join(" ", of),
                one.name().equals(chosen) ? "selected" : "",
                ""));
    out.close("select");
    control.faults(name);
    out.close("div");
  }

  /** An item and what it is set to. */
  public static String nameAndNow(Changeable one, Wording wording) {
    String now = one.now().map(set -> " " + wording.exact(set) + " " + one.unit()).orElse("");
    return name(one, wording) + now;
  }

  private String now(Changeable one) {
    String now =
        one.now()
            .map(set -> wording.exact(set) + " " + one.unit())
            .orElseGet(() -> word("change.notNoted") + ", " + one.unit());
    return name(one) + " (" + word("change.now") + " " + now + ")";
  }

  private String name(Changeable one) {
    return name(one, wording);
  }

  private static String name(Changeable one, Wording wording) {
    return Stream.of(
            Stream.of(one.fastener().orElse(one.item())), one.side().stream().map(wording::word))
        .flatMap(words -> words)
        .collect(Collectors.joining(", "));
  }

  /**
   * One tap that all fasteners are secured, and a field for each that is not, or otherwise.
   *
   * @param first the number of the first one's row
   */
  public Markup fasteners(List<Changeable> fasteners, int first) {
    out.open("fieldset", "class", "measures").element("legend", word("change.fasteners"));
    if (fasteners.isEmpty()) {
      out.element("p", word("change.noFastener"), "class", "note").close("fieldset");
      return out;
    }
    out.open("div", "class", "field check");
    boolean checked = typed.containsKey(SECURED);
    out.open(
        "input",
        "type",
        "checkbox",
        "id",
        SECURED,
        "name",
        SECURED,
        "value",
        "yes",
        checked ? "checked" : "",
        "");
    String all = fasteners.stream().map(this::torque).collect(Collectors.joining("; "));
    out.element("label", word("change.secured") + ": " + all, "for", SECURED).close("div");
    boolean typedOne = typed.keySet().stream().anyMatch(name -> isException(name, first));
    out.open("details", typedOne || !faults.isEmpty() ? "open" : "", "");
    out.element("summary", word("change.exceptions"));
    for (int i = 0; i < fasteners.size(); i++) {
      Changeable one = fasteners.get(i);
      control.number(AlignmentChange.lead(first + i) + SET, name(one), one.unit());
    }
    out.close("details").close("fieldset");
    return out;
  }

  private static boolean isException(String name, int first) {
    return name.startsWith("items[") && !name.startsWith("items[" + (first - 1) + "]");
  }

  private String torque(Changeable one) {
    return nameAndNow(one, wording);
  }

  /** Why, of a row. */
  public Markup why(int number) {
    control.words(AlignmentChange.lead(number) + "why", word("change.why"));
    return out;
  }

  /** All the fields that were asked for. */
  public Markup all() {
    return out;
  }

  private String word(String key) {
    return wording.word("Web." + key);
  }
}
