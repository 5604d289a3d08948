package caryatid.web.page;

import caryatid.wording.Wording;

/** A place where a file is dropped or chosen; the script sends it as it is. */
public final class UploadMarkup {
  private final Wording wording;

  public UploadMarkup(Wording wording) {
    this.wording = wording;
  }

  /**
   * The form.
   *
   * @param action where the file is sent
   * @param label what file it is
   * @param further fields that go with it
   */
  public Markup form(String action, String label, Markup further) {
    Markup out = new Markup();
    out.open("form", "method", "post", "action", action, "class", "upload", "data-upload", "");
    out.add(further).open("div", "class", "drop");
    out.element("label", label, "for", "file");
    out.open("input", "type", "file", "id", "file", "required", "").close("div");
    out.open("p", "class", "busy", "role", "status", "hidden", "")
        .element("span", wording.word("Web.reading"))
        .element("button", wording.word("Web.cancel"), "type", "button")
        .close("p");
    out.element("button", wording.word("Web.send"), "class", "strong");
    out.open("noscript").element("p", wording.word("Web.needsScript")).close("noscript");
    return out.close("form");
  }
}
