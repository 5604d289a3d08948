package caryatid.sheet;

import caryatid.loadline.LandmarkKind;
import caryatid.remark.Argument;
import caryatid.sheet.yaml.Forms;
import caryatid.sheet.yaml.Section;
import java.util.List;
import java.util.Optional;

/** What a trial sheet says of the prosthesis, the shoe and the practitioner's own words. */
final class WearerSection {
  private WearerSection() {}

  /** Required where the prosthesis has a knee, refused elsewhere. */
  static Optional<KneeSetting> knee(Section root, Optional<AmputationLevel> level) {
    if (level.filter(l -> !l.prostheticKnee()).isPresent()) {
      root.without("knee", Entry.NO_PROSTHETIC_KNEE, Argument.term(level.get()));
      return Optional.empty();
    }
    Optional<Section> section =
        level.isPresent() ? root.requiredSection("knee") : root.optionalSection("knee");
    return section.flatMap(WearerSection::knee);
  }

  private static Optional<KneeSetting> knee(Section section) {
    Optional<Boolean> locked = section.required("locked", Forms.YES_NO);
    Optional<String> mode = section.optional("mode", Forms.TEXT);
    isPolycentric(section);
    return section.build(() -> new KneeSetting(locked.orElseThrow(), mode));
  }

  private static boolean isPolycentric(Section knee) {
    return knee.optional("polycentric", Forms.YES_NO).orElse(false);
  }

  /** Of a knee of several axes, the one that its document names has to be said. */
  static void axis(Section root, List<LandmarkEntry> landmarks) {
    boolean polycentric =
        root.optionalSection("knee").filter(WearerSection::isPolycentric).isPresent();
    boolean unnamed =
        landmarks.stream()
            .filter(l -> l.kind() == LandmarkKind.KNEE_CENTRE)
            .anyMatch(l -> l.definition().isEmpty());
    if (polycentric && unnamed) {
      root.refuse(root.place("landmarks"), Entry.AXIS_NOT_NAMED);
    }
  }

  static Optional<Footwear> footwear(Section section) {
    Optional<String> worn = section.required("worn", Forms.TEXT);
    Optional<Double> heel = section.required("heel-height-mm", Forms.number(-50, 200));
    return section.build(() -> new Footwear(worn.orElseThrow(), heel.orElseThrow()));
  }

  static List<Component> components(Section root) {
    return root.sections("components", WearerSection::component).stream()
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<Component> component(Section section) {
    Optional<String> what = section.required("what", Forms.TEXT);
    Optional<String> name = section.required("name", Forms.TEXT);
    Optional<String> serial = section.optional("serial", Forms.TEXT);
    return section.build(() -> new Component(what.orElseThrow(), name.orElseThrow(), serial));
  }

  static Optional<Notes> notes(Section section) {
    Optional<String> lastChange = section.optional("last-change", Forms.TEXT);
    Optional<String> conclusion = section.optional("conclusion", Forms.TEXT);
    Optional<String> comfort = section.optional("comfort", Forms.TEXT);
    Optional<String> skin = section.optional("skin", Forms.TEXT);
    Optional<String> reason = section.optional("reason", Forms.TEXT);
    Optional<String> nextStep = section.optional("next-step", Forms.TEXT);
    Optional<String> practitioner = section.optional("practitioner", Forms.TEXT);
    Optional<String> role = section.optional("role", Forms.TEXT);
    return section.build(
        () ->
            new Notes(lastChange, conclusion, comfort, skin, reason, nextStep, practitioner, role));
  }
}
