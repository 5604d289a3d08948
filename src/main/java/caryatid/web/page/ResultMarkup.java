package caryatid.web.page;

import caryatid.alignment.Result;
import caryatid.remark.Argument;
import caryatid.wording.LeadLine;
import caryatid.wording.ResultSentences;
import caryatid.wording.ResultText;
import caryatid.wording.Wording;
import java.util.List;

/** What was found so far: what is unsafe first, a sentence for each landmark, the strips. */
public final class ResultMarkup {
  /** The page on which a card is held to the screen. */
  public static final String CARD = "/card";

  private ResultMarkup() {}

  /** What is unsafe first, then what to do next, and a sentence for each recommended offset. */
  public static Markup sentences(Result result, Wording wording) {
    Markup out = new Markup();
    for (String line : ResultSentences.unsafe(result, wording)) {
      out.element("p", "! " + line, "class", "danger");
    }
    LeadLine.of(result.state(), wording)
        .ifPresent(next -> out.element("p", next, "class", "verdict lead"));
    ResultSentences.help(result, wording).forEach(line -> out.element("p", line));
    List<ResultSentences.InWords> findings = ResultSentences.findings(result, wording);
    for (ResultSentences.InWords said : findings) {
      out.element("p", said.result(), "class", "verdict").element("p", said.sentence());
      said.undecided().ifPresent(note -> out.element("p", note, "class", "note"));
      said.help().ifPresent(help -> out.element("p", help, "class", "note"));
    }
    if (!findings.isEmpty()) {
      out.element("p", wording.word("Web.brackets"), "class", "note");
    }
    ResultSentences.setByHand(result, wording)
        .forEach(line -> out.element("p", line, "class", "note"));
    return out;
  }

  /**
   * The drawings, and all numbers folded.
   *
   * @param strips drawings, as elements of a page
   */
  public static Markup drawings(Result result, List<String> strips, Wording wording) {
    Markup out = new Markup();
    strips.forEach(svg -> out.open("div", "class", "figure strips").drawing(svg).close("div"));
    if (!strips.isEmpty()) {
      trueSize(out, wording);
    }
    out.open("details").element("summary", wording.word("Web.numbers"));
    out.open("div", "class", "lines");
    ResultText.lines(result, wording).stream()
        .filter(line -> !line.isBlank())
        .map(line -> inFormsWords(line, wording))
        .forEach(line -> out.element("p", line));
    return out.close("div").close("details");
  }

  /** What a sheet would say in its keys, the window's forms say in their words. */
  private static String inFormsWords(String line, Wording wording) {
    return line.equals(wording.word("LandmarkWords.ANKLE_AXIS_OPEN"))
        ? wording.word("Web.ankleAxisOpen")
        : line;
  }

  /** Nothing is claimed of a screen's scale before a card was held to it. */
  private static void trueSize(Markup out, Wording wording) {
    out.open("p", "class", "note no-true-size").text(wording.word("Web.noTrueSize") + " ");
    out.element("a", wording.word("Web.card"), "href", CARD).close("p");
    out.open("p", "class", "note true-size-only").text(wording.word("Web.trueSize") + " ");
    out.element("a", wording.word("Web.cardAgain"), "href", CARD).close("p");
  }

  /** The heading: of how many stands. */
  public static String heading(int stands, Wording wording) {
    return stands == 1
        ? wording.word("Web.resultOfOne")
        : wording.fill("Web.resultOf", Argument.count(stands));
  }
}
