package caryatid.sheet;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LookAt;
import caryatid.loadline.Target;
import caryatid.loadline.Target.MeantFor;
import caryatid.remark.Argument;
import caryatid.sheet.yaml.Form;
import caryatid.sheet.yaml.Forms;
import caryatid.sheet.yaml.Located;
import caryatid.sheet.yaml.Section;
import java.util.Optional;

/** One target of a trial sheet. */
final class TargetSection {
  private static final Form<Double> OFFSET_MM = Forms.number(-1_000, 1_000);
  private static final Form<Double> TOLERANCE_MM = Forms.number(0, 1_000);

  private TargetSection() {}

  static Optional<Located<Target>> target(Section section, Optional<ProstheticSide> prosthetic) {
    Optional<Plane> plane = section.required("plane", Forms.word(Plane.class));
    Optional<String> landmark = section.required("landmark", Forms.TEXT);
    Side side = Sides.of(section, prosthetic);
    Optional<Double> recommended = section.required("recommended-mm", OFFSET_MM);
    Optional<Double> below = section.required("below-mm", TOLERANCE_MM);
    Optional<Double> above = section.required("above-mm", TOLERANCE_MM);
    Optional<String> source = section.optional("source", Forms.TEXT);
    Optional<MeantFor> meantFor = section.optional("meant-for", Forms.word(MeantFor.class));
    Optional<String> condition = section.optional("valid-for", Forms.TEXT);
    Optional<LookAt> lookAt = lookAt(section, plane);
    if (!section.has("source")) {
      section.refuse(section.place(), Entry.TARGET_WITHOUT_SOURCE);
    }
    if (below.isPresent() && above.isPresent() && below.get() + above.get() <= 0) {
      section.refuse(section.place("above-mm"), Entry.TARGET_WITHOUT_TOLERANCE);
    }
    return section.build(
        () ->
            new Located<>(
                new Target(
                    plane.orElseThrow(),
                    side,
                    landmark.orElseThrow(),
                    recommended.orElseThrow(),
                    below.orElseThrow(),
                    above.orElseThrow(),
                    source.orElseThrow(),
                    meantFor.orElse(MeantFor.FOOT),
                    condition,
                    lookAt),
                section.place()));
  }

  /** What the document says of a line too far to one side; the sides are those of the plane. */
  private static Optional<LookAt> lookAt(Section section, Optional<Plane> plane) {
    LookAt lookAt =
        new LookAt(
            side(section, plane, Plane.SAGITTAL, "too-far-anterior"),
            side(section, plane, Plane.SAGITTAL, "too-far-posterior"),
            side(section, plane, Plane.FRONTAL, "too-far-medial"),
            side(section, plane, Plane.FRONTAL, "too-far-lateral"));
    return lookAt.equals(LookAt.NOTHING) ? Optional.empty() : Optional.of(lookAt);
  }

  private static Optional<String> side(
      Section section, Optional<Plane> plane, Plane of, String key) {
    Optional<String> words = section.optional(key, Forms.TEXT);
    if (section.has(key) && plane.filter(p -> p != of).isPresent()) {
      section.refuse(section.place(key), Entry.SIDE_OF_OTHER_PLANE, Argument.text(key));
    }
    return words;
  }
}
