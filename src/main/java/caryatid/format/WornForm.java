package caryatid.format;

import caryatid.sheet.Component;
import caryatid.sheet.Footwear;
import caryatid.sheet.KneeSetting;
import java.io.IOException;

/** What the wearer wore. */
final class WornForm {
  private WornForm() {}

  static void writeKnee(KneeSetting knee, JsonObjectWriter out) throws IOException {
    out.flag("locked", knee.locked()).text("mode", knee.mode());
  }

  static KneeSetting readKnee(JsonObjectReader in) {
    return new KneeSetting(in.flag("locked"), in.textIfThere("mode"));
  }

  static void writeFootwear(Footwear footwear, JsonObjectWriter out) throws IOException {
    out.text("description", footwear.description())
        .number("heel-height-mm", footwear.heelHeightMm());
  }

  static Footwear readFootwear(JsonObjectReader in) {
    return new Footwear(in.text("description"), in.number("heel-height-mm"));
  }

  static void writeComponent(Component component, JsonObjectWriter out) throws IOException {
    out.text("what", component.what())
        .text("name", component.name())
        .text("serial", component.serial());
  }

  static Component readComponent(JsonObjectReader in) {
    return new Component(in.text("what"), in.text("name"), in.textIfThere("serial"));
  }
}
