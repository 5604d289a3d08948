package caryatid.web.page;

import caryatid.usecase.stand.NextChange;
import caryatid.wording.Wording;
import java.util.List;

/** What to change next, below a result: a sentence, a drawing, and the numbers folded. */
public final class AdviceMarkup {
  private AdviceMarkup() {}

  /**
   * The advice for each leg.
   *
   * @param bench the address where the travel of a joint is noted
   */
  public static Markup of(List<NextChange> legs, String bench, Wording wording) {
    Markup out = new Markup();
    for (NextChange leg : legs) {
      out.open("section", "class", "advice").element("h2", leg.title());
      out.element("p", leg.sentence());
      if (leg.travelMissing()) {
        out.open("p")
            .element("a", wording.word("Web.noteTravel"), "class", "button", "href", bench);
        out.close("p");
      }
      leg.drawing().ifPresent(svg -> out.open("div", "class", "figure").drawing(svg).close("div"));
      leg.always().forEach(said -> out.element("p", said, "class", "note"));
      out.open("details").element("summary", wording.word("AdviceText.numbers"));
      out.open("div", "class", "lines");
      leg.numbers().forEach(line -> out.element("p", line));
      out.close("div").close("details").close("section");
    }
    return out;
  }
}
