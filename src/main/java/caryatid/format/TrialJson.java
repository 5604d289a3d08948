package caryatid.format;

import caryatid.loadline.Bounds;
import caryatid.loadline.GeometryLimits;
import caryatid.loadline.LimitedQuantity;
import caryatid.sheet.Component;
import caryatid.sheet.Footwear;
import caryatid.sheet.KneeSetting;
import caryatid.sheet.Notes;
import caryatid.sheet.OtherFoot;
import caryatid.sheet.TrialSheet;
import caryatid.standing.NamedStretch;
import caryatid.standing.Stance;
import caryatid.standing.Stance.BothFeetOnOnePlate;
import caryatid.standing.Stance.PlatePerFoot;
import caryatid.standing.Stance.ProstheticFootOnPlate;
import caryatid.standing.Stretch;
import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** A trial sheet in JSON. */
final class TrialJson {
  private TrialJson() {}

  static void write(TrialSheet trial, JsonObjectWriter out) throws IOException {
    out.text("wearer", trial.wearer())
        .time("at", trial.at())
        .word("side", BodySpellings.PROSTHETIC_SIDE, trial.side())
        .word("level", BodySpellings.LEVEL, trial.level())
        .number("body-mass-kg", trial.bodyMassKg())
        .object("stance", trial.stance(), StanceJson::write)
        .object("other-foot", trial.otherFoot(), StanceJson::writeOtherFoot)
        .word("hands", BodySpellings.HANDS, trial.hands())
        .object("knee", trial.knee(), TrialJson::writeKnee)
        .text("ankle-axis", trial.ankleAxis().map(BodySpellings.ANKLE_AXIS::of))
        .object("footwear", trial.footwear(), TrialJson::writeFootwear)
        .number("stance-width-mm", trial.stanceWidthMm())
        .number("toe-out-rad", trial.toeOutRad())
        .number("minutes-walked", trial.minutesWalked())
        .list("components", trial.components(), TrialJson::writeComponent)
        .list("landmarks", trial.landmarks(), LandmarkJson::writeEntry)
        .list("targets", trial.targets(), TargetJson::write)
        .listUnlessEmpty("stretches", trial.stretches(), TrialJson::writeStretch)
        .object("doubts", trial.doubts(), TargetJson::writeDoubts)
        .object("rule", trial.rule(), TargetJson::writeRule)
        .listUnlessEmpty("limits", limits(trial.limits()), TrialJson::writeLimit)
        .textsUnlessEmpty("as-meant", trial.asMeant())
        .object("notes", trial.notes(), TrialJson::writeNotes);
  }

  static TrialSheet read(JsonObjectReader in) {
    return new TrialSheet(
        in.text("wearer"),
        in.time("at"),
        in.word("side", BodySpellings.PROSTHETIC_SIDE),
        in.word("level", BodySpellings.LEVEL),
        in.numberIfThere("body-mass-kg"),
        in.object("stance", StanceJson::read),
        in.objectIfThere("other-foot", StanceJson::readOtherFoot),
        in.word("hands", BodySpellings.HANDS),
        in.objectIfThere("knee", TrialJson::readKnee),
        in.wordIfThere("ankle-axis", BodySpellings.ANKLE_AXIS),
        in.object("footwear", TrialJson::readFootwear),
        in.numberIfThere("stance-width-mm"),
        in.numberIfThere("toe-out-rad"),
        in.numberIfThere("minutes-walked"),
        in.list("components", TrialJson::readComponent),
        in.list("landmarks", LandmarkJson::readEntry),
        in.list("targets", TargetJson::read),
        in.listIfThere("stretches", TrialJson::readStretch),
        in.object("doubts", TargetJson::readDoubts),
        in.object("rule", TargetJson::readRule),
        readLimits(in),
        in.textsIfThere("as-meant"),
        in.object("notes", TrialJson::readNotes));
  }

  /** Open ends are left out. */
  private static void writeStretch(NamedStretch set, JsonObjectWriter out) throws IOException {
    out.text("recording", set.recording())
        .number("from-s", finite(set.stretch().fromS()))
        .number("to-s", finite(set.stretch().toS()));
  }

  private static OptionalDouble finite(double seconds) {
    return Double.isFinite(seconds) ? OptionalDouble.of(seconds) : OptionalDouble.empty();
  }

  private static NamedStretch readStretch(JsonObjectReader in) {
    return new NamedStretch(
        in.text("recording"),
        new Stretch(
            in.numberIfThere("from-s").orElse(Double.NEGATIVE_INFINITY),
            in.numberIfThere("to-s").orElse(Double.POSITIVE_INFINITY)));
  }

  /** In one order, whatever order a map gives. */
  private static List<Map.Entry<LimitedQuantity, Bounds>> limits(GeometryLimits limits) {
    return List.copyOf(new TreeMap<>(limits.own()).entrySet());
  }

  private static void writeLimit(Map.Entry<LimitedQuantity, Bounds> limit, JsonObjectWriter out)
      throws IOException {
    Bounds bounds = limit.getValue();
    out.word("quantity", FindingSpellings.LIMITED, limit.getKey())
        .number("ask-below", bounds.askBelow())
        .number("ask-above", bounds.askAbove())
        .number("refuse-below", bounds.refuseBelow())
        .number("refuse-above", bounds.refuseAbove());
  }

  /** Version 1 knew none. */
  private static GeometryLimits readLimits(JsonObjectReader in) {
    Map<LimitedQuantity, Bounds> own = new EnumMap<>(LimitedQuantity.class);
    in.listIfThere("limits", TrialJson::readLimit)
        .forEach(limit -> own.put(limit.getKey(), limit.getValue()));
    return new GeometryLimits(own);
  }

  private static Map.Entry<LimitedQuantity, Bounds> readLimit(JsonObjectReader in) {
    return Map.entry(
        in.word("quantity", FindingSpellings.LIMITED),
        new Bounds(
            in.number("ask-below"),
            in.number("ask-above"),
            in.number("refuse-below"),
            in.number("refuse-above")));
  }

  private static void writeKnee(KneeSetting knee, JsonObjectWriter out) throws IOException {
    out.flag("locked", knee.locked()).text("mode", knee.mode());
  }

  private static KneeSetting readKnee(JsonObjectReader in) {
    return new KneeSetting(in.flag("locked"), in.textIfThere("mode"));
  }

  private static void writeFootwear(Footwear footwear, JsonObjectWriter out) throws IOException {
    out.text("description", footwear.description())
        .number("heel-height-mm", footwear.heelHeightMm());
  }

  private static Footwear readFootwear(JsonObjectReader in) {
    return new Footwear(in.text("description"), in.number("heel-height-mm"));
  }

  private static void writeComponent(Component component, JsonObjectWriter out) throws IOException {
    out.text("what", component.what())
        .text("name", component.name())
        .text("serial", component.serial());
  }

  private static Component readComponent(JsonObjectReader in) {
    return new Component(in.text("what"), in.text("name"), in.textIfThere("serial"));
  }

  private static void writeNotes(Notes notes, JsonObjectWriter out) throws IOException {
    out.text("last-change", notes.lastChange())
        .text("conclusion", notes.conclusion())
        .text("comfort", notes.comfort())
        .text("skin", notes.skin())
        .text("reason", notes.reason())
        .text("next-step", notes.nextStep())
        .text("practitioner", notes.practitioner())
        .text("role", notes.role());
  }

  private static Notes readNotes(JsonObjectReader in) {
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

  /** Which foot stood on what. */
  private static final class StanceJson {
    private static final String KIND = "kind";
    private static final String PROSTHETIC = "prosthetic-foot-on-plate";
    private static final String PER_FOOT = "plate-per-foot";
    private static final String BOTH = "both-feet-on-one-plate";
    private static final String PLATE = "plate";

    private StanceJson() {}

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
}
