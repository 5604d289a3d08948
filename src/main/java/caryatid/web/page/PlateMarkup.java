package caryatid.web.page;

import caryatid.recording.model.Inspection;
import caryatid.remark.Argument;
import caryatid.usecase.inspect.DescriptionGap;
import caryatid.usecase.inspect.PlateDraft;
import caryatid.usecase.inspect.PlateMeasures;
import caryatid.usecase.inspect.PlateMeasures.Fault;
import caryatid.wording.InspectionText;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What is understood of an export, and the questions that its description leaves open. */
public final class PlateMarkup {
  private static final String NAME = "plate-name";

  private final Wording wording;
  private final String address;

  /**
   * @param address of the export's page
   */
  public PlateMarkup(Wording wording, String address) {
    this.wording = wording;
    this.address = address;
  }

  /**
   * The page's content.
   *
   * @param faults what is wrong with what was answered
   * @param typed edges, lines and the name as they were typed; empty before anything was
   * @param wrong what is wrong with edges and lines
   */
  public Markup page(
      PlateDraft draft, List<String> faults, Map<String, String> typed, Map<String, Fault> wrong) {
    Markup out = new Markup();
    if (!faults.isEmpty()) {
      out.open("div", "class", "fault", "role", "alert", "id", "faults");
      faults.forEach(fault -> out.element("p", fault));
      out.close("div");
    }
    Inspection seen = draft.inspection();
    lines(out, "Web.plateProblems", "facts fault", InspectionText.problems(seen, wording));
    if (draft.gaps().isEmpty()) {
      finish(out, draft, typed, wrong);
    } else {
      questions(out, draft);
    }
    List<String> facts = new ArrayList<>(InspectionText.facts(seen, wording));
    measures(draft).forEach(facts::add);
    lines(out, "Web.understood", "facts", facts);
    lines(out, "InspectionText.remarks", "facts", InspectionText.remarks(seen, wording));
    text(out, draft);
    return out;
  }

  private void lines(Markup out, String title, String look, List<String> lines) {
    if (!lines.isEmpty()) {
      out.element("h2", wording.word(title)).open("ul", "class", look);
      lines.forEach(line -> out.element("li", line));
      out.close("ul");
    }
  }

  private void questions(Markup out, PlateDraft draft) {
    out.element("h2", wording.word("Web.plateQuestions"));
    out.open("form", "method", "post", "action", address, "autocomplete", "off", "class", "entry");
    out.open("ul", "class", "facts");
    draft.inspection().questions().stream()
        .map(question -> InspectionText.question(question, wording))
        .forEach(question -> out.element("li", question));
    out.close("ul");
    int number = 0;
    for (DescriptionGap gap : draft.gaps()) {
      gap(out, gap, "answer-" + ++number);
    }
    out.element("button", wording.word("Web.plateAnswer"), "class", "strong").close("form");
  }

  private void gap(Markup out, DescriptionGap gap, String name) {
    String plate = gap.plate().isEmpty() ? "" : gap.plate() + ", ";
    out.open("div", "class", "field").element("label", plate + label(gap), "for", name);
    if (gap.choices().isEmpty()) {
      out.open("input", "id", name, "name", name, "type", "text", "class", "short", "required", "");
    } else {
      out.open("select", "id", name, "name", name, "required", "");
      out.element("option", "", "value", "");
      gap.choices().forEach(choice -> out.element("option", word(choice), "value", choice));
      out.close("select");
    }
    out.close("div");
  }

  private String label(DescriptionGap gap) {
    return known("Web.gap." + gap.place(), gap.place());
  }

  private String word(String choice) {
    return known("Web.gapWord." + choice.replace(' ', '-'), choice);
  }

  private String known(String key, String otherwise) {
    return wording.knows(key) ? wording.word(key) : otherwise;
  }

  /** The lines that one can measure from, each with its place. */
  private List<String> measures(PlateDraft draft) {
    Map<String, String> fields = draft.measures().fields();
    String zero = MeasuresMarkup.ofZero(draft.plates().size() > 1);
    List<String> said = new ArrayList<>();
    for (int i = 1; i <= draft.lines().size(); i++) {
      String row = PlateMeasures.line(i);
      said.add(
          wording.fill(
              "Web.lineAt",
              Argument.text(fields.get(row + "name")),
              Argument.text(fields.get(row + "mm")),
              Argument.text(wording.word(zero + fields.get(row + "side")))));
    }
    return said;
  }

  private void finish(
      Markup out, PlateDraft draft, Map<String, String> typed, Map<String, Fault> wrong) {
    if (!draft.complete()) {
      return;
    }
    String complete = draft.lines().isEmpty() ? "Web.plateNoLines" : "Web.plateComplete";
    out.element("p", wording.word(complete), "class", "kept-now");
    out.open(
        "form",
        "method",
        "post",
        "action",
        address + "/keep",
        "autocomplete",
        "off",
        "class",
        "entry");
    out.add(new MeasuresMarkup(wording, draft, typed, wrong).of(draft));
    String called = typed.getOrDefault(NAME, "");
    out.open("div", "class", "field");
    out.element("label", wording.word("Web.plateName") + " *", "for", NAME);
    String[] name = {"id", NAME, "name", NAME, "class", "words", "required", "", "value", called};
    out.open("input", name).close("div").open("div", "class", "field check");
    String[] replace = {
      "id", "plate-replace", "name", "plate-replace", "value", "yes", "type", "checkbox"
    };
    out.open("input", replace);
    out.element("label", wording.word("Web.plateReplace"), "for", "plate-replace").close("div");
    out.element("button", wording.word("Web.plateKeep"), "class", "strong").close("form");
  }

  /** The description itself, for what the questions do not ask: lines, edges, accuracy. */
  private void text(Markup out, PlateDraft draft) {
    out.open("details", "class", "latest").element("summary", wording.word("Web.plateText"));
    out.element("p", wording.word("Web.plateTextMore"));
    out.open("form", "method", "post", "action", address + "/text", "autocomplete", "off");
    out.element("label", wording.word("Web.plateText"), "for", "plate-text", "class", "hidden");
    out.open(
        "textarea",
        "id",
        "plate-text",
        "name",
        "plate-text",
        "rows",
        "18",
        "spellcheck",
        "false",
        "class",
        "code");
    out.text(draft.text()).close("textarea");
    out.element("button", wording.word("Web.plateReadText")).close("form");
    out.open("p")
        .element(
            "a",
            wording.word("Web.plateDownload"),
            "class",
            "button",
            "href",
            address + "/plate.yaml")
        .close("p");
    out.close("details");
  }
}
