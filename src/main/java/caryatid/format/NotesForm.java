package caryatid.format;

import caryatid.sheet.Notes;
import java.io.IOException;

/** What the practitioner wrote. */
final class NotesForm {
  private NotesForm() {}

  static void write(Notes notes, JsonObjectWriter out) throws IOException {
    out.text("last-change", notes.lastChange())
        .text("conclusion", notes.conclusion())
        .text("comfort", notes.comfort())
        .text("skin", notes.skin())
        .text("reason", notes.reason())
        .text("next-step", notes.nextStep())
        .text("practitioner", notes.practitioner())
        .text("role", notes.role());
  }

  static Notes read(JsonObjectReader in) {
    return new Notes(
        in.textIfThere("last-change"),
        in.textIfThere("conclusion"),
        in.textIfThere("comfort"),
        in.textIfThere("skin"),
        in.textIfThere("reason"),
        in.textIfThere("next-step"),
        in.textIfThere("practitioner"),
        in.textIfThere("role"));
  }
}
