package caryatid.format;

import caryatid.sheet.OtherFoot;
import caryatid.standing.Stance;
import caryatid.standing.Stance.BothFeetOnOnePlate;
import caryatid.standing.Stance.PlatePerFoot;
import caryatid.standing.Stance.ProstheticFootOnPlate;
import java.io.IOException;

/** Which foot stood on what. */
final class StanceForm {
  private static final String KIND = "kind";
  private static final String PROSTHETIC = "prosthetic-foot-on-plate";
  private static final String PER_FOOT = "plate-per-foot";
  private static final String BOTH = "both-feet-on-one-plate";
  private static final String PLATE = "plate";

  private StanceForm() {}

  static void write(Stance stance, JsonObjectWriter out) throws IOException {
    if (stance instanceof ProstheticFootOnPlate one) {
      out.text(KIND, PROSTHETIC).text(PLATE, one.plate());
    } else if (stance instanceof PlatePerFoot each) {
      out.text(KIND, PER_FOOT)
          .text("left-plate", each.leftPlate())
          .text("right-plate", each.rightPlate());
    } else if (stance instanceof BothFeetOnOnePlate both) {
      out.text(KIND, BOTH).text(PLATE, both.plate());
    }
  }

  static Stance read(JsonObjectReader in) {
    return switch (in.kind(KIND, PROSTHETIC, PER_FOOT, BOTH)) {
      case PROSTHETIC -> new ProstheticFootOnPlate(in.textIfThere(PLATE));
      case PER_FOOT -> new PlatePerFoot(in.text("left-plate"), in.text("right-plate"));
      default -> new BothFeetOnOnePlate(in.textIfThere(PLATE));
    };
  }

  static void writeOtherFoot(OtherFoot foot, JsonObjectWriter out) throws IOException {
    out.word("on", BodySpellings.GROUND, foot.on())
        .number("height-difference-mm", foot.heightDifferenceMm());
  }

  static OtherFoot readOtherFoot(JsonObjectReader in) {
    return new OtherFoot(in.word("on", BodySpellings.GROUND), in.number("height-difference-mm"));
  }
}
