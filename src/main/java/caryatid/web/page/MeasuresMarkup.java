package caryatid.web.page;

import caryatid.remark.Argument;
import caryatid.usecase.inspect.PlateDraft;
import caryatid.usecase.inspect.PlateMeasures;
import caryatid.usecase.inspect.PlateMeasures.Edge;
import caryatid.usecase.inspect.PlateMeasures.Fault;
import caryatid.usecase.inspect.PlateMeasures.SideOfZero;
import caryatid.wording.Wording;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The edges of plates and the lines that one measures from, as fields. */
final class MeasuresMarkup {
  private static final int FREE_LINES = 2;

  private final Wording wording;
  private final Map<String, String> fields;
  private final boolean several;
  private final Markup out = new Markup();
  private final Control control;

  /**
   * @param typed what was typed; empty to show what the description says
   * @param wrong what is wrong with it
   */
  MeasuresMarkup(
      Wording wording, PlateDraft draft, Map<String, String> typed, Map<String, Fault> wrong) {
    this.wording = wording;
    this.several = draft.plates().size() > 1;
    this.fields = new LinkedHashMap<>(typed.isEmpty() ? draft.measures().fields() : typed);
    Map<String, List<String>> atFields = new LinkedHashMap<>();
    wrong.forEach((name, fault) -> atFields.put(name, List.of(said(name, fault))));
    if (typed.isEmpty() && draft.lines().isEmpty()) {
      offer(1, "rear", SideOfZero.BEHIND);
      offer(2, "midline", SideOfZero.RIGHT);
    }
    this.control = new Control(out, fields, Map.of(), new FieldFaults(atFields, List.of()));
  }

  /** Usual lines, by their names; one that is given no place is none. */
  private void offer(int number, String name, SideOfZero side) {
    fields.put(PlateMeasures.line(number) + "name", word("lineName." + name));
    fields.put(PlateMeasures.line(number) + "side", side.code());
  }

  private String said(String name, Fault fault) {
    return switch (fault) {
      case MISSING -> word("fault.missing");
      case NO_NUMBER -> NumberFault.of(fields.getOrDefault(name, ""), wording);
      case OUT_OF_RANGE -> word("fault.tooFar");
      case EDGES_SWAPPED -> word("fault.edges");
      case PLATES_OVERLAP -> word("fault.platesOverlap");
      case LINE_TWICE -> word("fault.lineTwice");
    };
  }

  private String word(String key) {
    return wording.word("Web." + key);
  }

  /** The fields. */
  Markup of(PlateDraft draft) {
    out.element("h2", word("measures")).element("p", word("measuresMore"), "class", "note");
    if (several) {
      out.element("p", word("measuresCommon"), "class", "note");
    }
    for (int i = 1; i <= draft.plates().size(); i++) {
      out.open("fieldset", "class", "measures");
      out.element("legend", wording.fill("Web.edges", Argument.text(draft.plates().get(i - 1))));
      for (Edge edge : Edge.values()) {
        place(
            edge.field(i), edge.field(i) + "-side", wording.word("Web.edge." + edge), edge.sides());
      }
      out.close("fieldset");
    }
    int last = 0;
    for (int i = 1; i <= PlateMeasures.MOST_LINES; i++) {
      last = fields.getOrDefault(PlateMeasures.line(i) + "name", "").isBlank() ? last : i;
    }
    for (int i = 1; i <= Math.min(last + FREE_LINES, PlateMeasures.MOST_LINES); i++) {
      line(PlateMeasures.line(i), i);
    }
    return out;
  }

  private void line(String row, int number) {
    out.open("fieldset", "class", "measures");
    out.element("legend", wording.fill("Web.lineNumber", Argument.count(number)));
    control.words(row + "name", word("lineName"));
    place(row + "mm", row + "side", word("lineLies"), List.of(SideOfZero.values()));
    String registration = row + "registration";
    fields.putIfAbsent(registration, "1");
    control.number(registration, word("registration"), "mm");
    out.close("fieldset");
  }

  /** How the keys begin that tell on which side of the zero something lies. */
  static String ofZero(boolean several) {
    return several ? "Web.ofCommonZero." : "Web.ofZero.";
  }

  private void place(String name, String side, String label, List<SideOfZero> sides) {
    out.open("div", "class", "field").element("label", label, "for", Control.id(name));
    control.bareNumber(name, "");
    out.element("span", "mm", "class", "unit");
    List<String> codes = sides.stream().map(SideOfZero::code).toList();
    List<String> words = codes.stream().map(code -> wording.word(ofZero(several) + code)).toList();
    control.bareChoice(side, label + ": " + word("side"), codes, words);
    control.faults(name);
    out.close("div");
  }
}
