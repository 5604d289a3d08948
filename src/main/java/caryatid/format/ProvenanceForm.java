package caryatid.format;

import caryatid.recording.model.Provenance;
import java.io.IOException;

/** From which file something was read. */
final class ProvenanceForm {
  private ProvenanceForm() {}

  static void write(Provenance file, JsonObjectWriter out) throws IOException {
    out.text("name", file.name()).whole("bytes", file.bytes()).text("sha512", file.sha512());
  }

  static Provenance read(JsonObjectReader in) {
    return new Provenance(in.text("name"), in.longWhole("bytes"), in.text("sha512"));
  }
}
