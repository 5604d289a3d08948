package caryatid.web.page;

import caryatid.remark.Unit;
import caryatid.usecase.stand.DrawnOverTime;
import caryatid.usecase.stand.StandFields;
import caryatid.wording.Wording;
import java.util.Locale;
import java.util.Map;

/**
 * A recording over time with the stretch that is used as a rectangle, whose edges the script moves;
 * without the script it is the drawing alone, and the two fields do the same.
 */
public final class StretchMarkup {
  private StretchMarkup() {}

  /**
   * The drawing.
   *
   * @param stand the number of the recording in its draft
   */
  public static Markup of(DrawnOverTime drawn, int stand, Wording wording) {
    Markup out = new Markup();
    out.open("div", "class", "figure")
        .open(
            "div",
            "class",
            "over-time",
            "data-axis-from",
            number(drawn.axisFrom()),
            "data-axis-to",
            number(drawn.axisTo()),
            "data-seconds",
            number(drawn.seconds()));
    out.drawing(drawn.svg()).open("div", "class", "used", "hidden", "");
    edge(out, drawn, stand, StandFields.FROM_S, drawn.fromS(), wording);
    edge(out, drawn, stand, StandFields.TO_S, drawn.toS(), wording);
    return out.close("div").close("div").close("div");
  }

  /**
   * The two fields of a recording.
   *
   * @param stand the number of the recording in its draft
   * @param file its name
   */
  public static Markup fields(
      int stand, String file, Map<String, String> typed, FieldFaults faults, Wording wording) {
    Markup out = new Markup();
    String words = wording.word("Web.stretch");
    out.open("div", "class", "stretch", "role", "group", "aria-label", words + ": " + file);
    out.element("p", words);
    Control control = new Control(out, typed, Map.of(), faults);
    control.number(
        StandFields.ofRecording(StandFields.FROM_S, stand), wording.word("Web.stretchFrom"), "s");
    control.number(
        StandFields.ofRecording(StandFields.TO_S, stand), wording.word("Web.stretchTo"), "s");
    out.element("p", wording.word("Web.stretchMore"), "class", "note");
    return out.close("div");
  }

  /** What was set by hand, in short; empty where nothing was. */
  public static String told(int stand, Map<String, String> typed, Wording wording) {
    String from = typed.getOrDefault(StandFields.ofRecording(StandFields.FROM_S, stand), "");
    String to = typed.getOrDefault(StandFields.ofRecording(StandFields.TO_S, stand), "");
    return from.isBlank() && to.isBlank()
        ? ""
        : wording.word("Web.stretch") + ": " + from + " – " + to + " s";
  }

  private static void edge(
      Markup out, DrawnOverTime drawn, int stand, String field, double seconds, Wording wording) {
    boolean from = field.equals(StandFields.FROM_S);
    String label =
        wording.word("Web.stretch")
            + ": "
            + wording.word(from ? "Web.stretchFrom" : "Web.stretchTo");
    out.open(
        "span",
        "class",
        from ? "edge from" : "edge to",
        "role",
        "slider",
        "tabindex",
        "0",
        "aria-label",
        label,
        "aria-valuemin",
        "0",
        "aria-valuemax",
        number(drawn.seconds()),
        "aria-valuenow",
        number(seconds),
        "aria-valuetext",
        wording.number(seconds, Unit.S),
        "data-edge",
        stand + "-" + field,
        "data-field",
        StandFields.ofRecording(field, stand));
    out.close("span");
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.4f", value);
  }
}
