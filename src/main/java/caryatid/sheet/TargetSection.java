package caryatid.sheet;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Target;
import caryatid.loadline.Target.MeantFor;
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
                    condition),
                section.place()));
  }
}
