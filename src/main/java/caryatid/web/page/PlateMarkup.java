package caryatid.web.page;

import caryatid.recording.model.Inspection;
import caryatid.usecase.inspect.DescriptionGap;
import caryatid.usecase.inspect.PlateDraft;
import caryatid.wording.InspectionText;
import caryatid.wording.Wording;
import java.util.List;

/** What is understood of an export, and the questions that its description leaves open. */
public final class PlateMarkup {
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
   */
  public Markup page(PlateDraft draft, List<String> faults) {
    Markup out = new Markup();
    if (!faults.isEmpty()) {
      out.open("div", "class", "fault", "role", "alert", "id", "faults");
      faults.forEach(fault -> out.element("p", fault));
      out.close("div");
    }
    Inspection seen = draft.inspection();
    lines(out, "Web.plateProblems", "facts fault", InspectionText.problems(seen, wording));
    if (draft.gaps().isEmpty()) {
      finish(out, draft);
    } else {
      questions(out, draft);
    }
    lines(out, "Web.understood", "facts", InspectionText.facts(seen, wording));
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
    return known("Web.gapWord." + choice, choice);
  }

  private String known(String key, String otherwise) {
    return wording.knows(key) ? wording.word(key) : otherwise;
  }

  private void finish(Markup out, PlateDraft draft) {
    if (!draft.complete()) {
      return;
    }
    out.element("p", wording.word("Web.plateComplete"), "class", "kept-now");
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
    out.open("div", "class", "field");
    out.element("label", wording.word("Web.plateName") + " *", "for", "plate-name");
    String[] name = {"id", "plate-name", "name", "plate-name", "class", "words", "required", ""};
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
