package caryatid.web.page;

import caryatid.remark.Argument;
import caryatid.wording.Wording;
import java.util.Optional;

/** A place where a file is dropped or chosen; the script sends it as it is. */
public final class UploadMarkup {
  /** The path of a file on this computer, where the script does not run. */
  public static final String PATH = "file-path";

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
    out.open("input", "type", "file", "id", "file").close("div");
    out.open("p", "class", "busy", "role", "status", "hidden", "")
        .element("span", wording.word("Web.reading"))
        .element("button", wording.word("Web.cancel"), "type", "button")
        .close("p");
    byPath(out.open("noscript"));
    out.close("noscript");
    out.element("button", wording.word("Web.send"), "class", "strong");
    return out.close("form");
  }

  /**
   * The place for a stand's recordings, within its form.
   *
   * @param watched the folder that is watched for more
   */
  public Markup recordings(Optional<String> watched) {
    Markup out = new Markup().open("div", "class", "drop", "id", "drop");
    out.open("label", "for", "recordings", "class", "button");
    out.text(wording.word("Web.chooseFile")).close("label");
    out.open("input", "type", "file", "id", "recordings", "multiple", "", "class", "file");
    out.element("p", wording.word("Web.orDrop"));
    out.open("noscript").element("p", wording.word("Web.withoutScript"));
    byPath(out);
    String take = wording.word("Web.fileTake");
    out.element("button", take, "name", "action", "value", "take").close("noscript");
    watched.ifPresent(
        folder ->
            out.element(
                "p",
                wording.fill("Web.watching", Argument.text(folder)),
                "class",
                "note",
                "data-watching",
                "3"));
    return out.close("div");
  }

  private void byPath(Markup out) {
    out.element("label", wording.word("Web.filePath"), "for", PATH);
    out.open("input", "id", PATH, "name", PATH, "type", "text", "class", "words");
  }
}
