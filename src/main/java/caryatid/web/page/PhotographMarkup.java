package caryatid.web.page;

import caryatid.remark.Argument;
import caryatid.usecase.stand.FormPhotographs.Waiting;
import caryatid.wording.Wording;
import java.util.List;

/** Photographs of an entry, small, and the place where more are dropped or chosen. */
public final class PhotographMarkup {
  /** Of a button: which one is taken away. */
  public static final String REMOVE = "photograph-remove";

  /** Where the script does not run: a file on this computer. */
  public static final String PATH = "photograph-path";

  private final Wording wording;
  private final String address;

  /**
   * @param address where photographs are sent, and under which each one is
   */
  public PhotographMarkup(Wording wording, String address) {
    this.wording = wording;
    this.address = address;
  }

  /** The part of a form, which the script sends photographs from. */
  public Markup section(List<Waiting> waiting, boolean open) {
    Markup out = new Markup();
    boolean shown = open || !waiting.isEmpty();
    out.open("details", "class", "latest photographs", shown ? "open" : "", "");
    out.element("summary", wording.word("Web.photographs"));
    out.open("div", "data-photographs", address).add(inner(waiting, List.of())).close("div");
    out.open("p", "class", "busy", "role", "status", "hidden", "")
        .element("span", wording.word("Web.reading"))
        .element("button", wording.word("Web.cancel"), "type", "button")
        .close("p");
    return out.close("details");
  }

  /** Those that wait, and what was wrong with the one that was sent last. */
  public Markup inner(List<Waiting> waiting, List<String> faults) {
    Markup out = new Markup();
    if (!faults.isEmpty()) {
      out.open("div", "class", "fault", "role", "alert");
      faults.forEach(fault -> out.element("p", fault));
      out.close("div");
    }
    out.open("ul", "class", "pictures");
    waiting.forEach(one -> picture(out, one));
    out.close("ul").open("div", "class", "drop");
    out.element("label", wording.word("Web.photographDrop"), "for", "photograph");
    out.open(
        "input",
        "type",
        "file",
        "id",
        "photograph",
        "accept",
        "image/jpeg,image/png",
        "multiple",
        "",
        "aria-describedby",
        "photograph-plain");
    out.element(
        "p", wording.word("Web.photographPlain"), "class", "note", "id", "photograph-plain");
    byPath(out);
    return out.close("div");
  }

  private void picture(Markup out, Waiting one) {
    String name = one.picture().name();
    out.open("li");
    picture(out, address + "/" + one.number(), name, wording);
    out.element(
        "button",
        wording.fill("Web.photographRemove", Argument.text(name)),
        "name",
        REMOVE,
        "value",
        Integer.toString(one.number()),
        "formnovalidate",
        "");
    out.close("li");
  }

  /** A photograph, small; it leads to the one in full. */
  public static void picture(Markup out, String address, String name, Wording wording) {
    String words = wording.fill("Web.photograph", Argument.text(name));
    out.open("a", "href", address).open("img", "src", address, "alt", words, "loading", "lazy");
    out.close("a");
  }

  private void byPath(Markup out) {
    out.open("noscript").element("label", wording.word("Web.filePath"), "for", PATH);
    out.open("input", "id", PATH, "name", PATH, "type", "text", "class", "words");
    out.element("button", wording.word("Web.fileTake"), "formnovalidate", "").close("noscript");
  }
}
