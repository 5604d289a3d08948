package caryatid.web.page;

import caryatid.wording.Wording;

/**
 * A rectangle that is made as wide as a card, so that drawings can be at true size on this screen.
 * Cards of the format ID-1 are 85.60 mm wide and 53.98 mm high (ISO/IEC 7810:2019, clause 5).
 */
public final class CardMarkup {
  private CardMarkup() {}

  /** The page's content; the script changes the width and keeps it in the browser. */
  public static Markup of(Wording wording) {
    Markup out = new Markup();
    out.open("noscript").element("p", wording.word("Web.needsScript")).close("noscript");
    out.element("p", wording.word("Web.cardHow"));
    out.open("form", "id", "card", "class", "entry").open("div", "class", "field");
    out.element("label", wording.word("Web.cardWidth"), "for", "card-width");
    out.open(
        "input",
        "type",
        "range",
        "id",
        "card-width",
        "min",
        "150",
        "max",
        "1200",
        "step",
        "0.5",
        "value",
        "324");
    out.close("div").open("div", "id", "card-shape").close("div");
    out.element("button", wording.word("Web.cardKeep"), "class", "strong").close("form");
    return out.element(
        "p", wording.word("Web.cardKept"), "class", "kept-now", "id", "card-kept", "hidden", "");
  }
}
