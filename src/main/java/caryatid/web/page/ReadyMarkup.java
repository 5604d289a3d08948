package caryatid.web.page;

import caryatid.remark.Argument;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Map;

/**
 * What is to be ready before the wearer stands: all of it before the first state of a day, then
 * only what a change can have altered. It is ticked for oneself and kept with the draft alone.
 */
public final class ReadyMarkup {
  private static final List<String> ALL = List.of("rails", "helper", "knee", "fasteners", "feet");
  private static final List<String> CHANGEABLE = List.of("knee", "fasteners", "feet");

  private ReadyMarkup() {}

  /**
   * The list, folded, with how much of it is ticked.
   *
   * @param typed what was typed
   * @param full whether it is the first state of a day
   * @param knee whether there is a prosthetic knee
   */
  public static Markup of(Map<String, String> typed, boolean full, boolean knee, Wording wording) {
    List<String> asked =
        (full ? ALL : CHANGEABLE).stream().filter(what -> knee || !what.equals("knee")).toList();
    long ticked = asked.stream().filter(what -> typed.containsKey(name(what))).count();
    Markup out = new Markup().open("details", "class", "fold ready-to-stand");
    out.element(
        "summary",
        wording.fill("Web.readyToStand", Argument.count(ticked), Argument.count(asked.size())));
    for (String what : asked) {
      String name = name(what);
      boolean checked = typed.containsKey(name);
      out.open("div", "class", "field check");
      out.open(
          "input",
          "type",
          "checkbox",
          "id",
          name,
          "name",
          name,
          "value",
          "yes",
          checked ? "checked" : "",
          "");
      out.element("label", wording.word("Web.readyToStand." + what), "for", name).close("div");
    }
    return out.close("details");
  }

  private static String name(String what) {
    return "ready-" + what;
  }
}
