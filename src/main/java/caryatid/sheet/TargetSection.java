package caryatid.sheet;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.OffTargetHints;
import caryatid.loadline.Target;
import caryatid.loadline.Target.MeantFor;
import caryatid.remark.Argument;
import caryatid.sheet.yaml.LocatedValue;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import java.util.Optional;

/** Reads one target of a trial sheet. */
final class TargetSection {
  private static final ValueParser<Double> OFFSET_MM = ValueParsers.number(-1_000, 1_000);
  private static final ValueParser<Double> TOLERANCE_MM = ValueParsers.number(0, 1_000);

  private TargetSection() {}

  static Optional<LocatedValue<Target>> target(
      Section section, Optional<ProstheticSide> prosthetic) {
    Optional<Plane> plane = section.required("plane", ValueParsers.word(Plane.class));
    Optional<String> landmark = section.required("landmark", ValueParsers.TEXT);
    Side side = LandmarkSection.side(section, prosthetic);
    Optional<Double> recommended = section.required("recommended-mm", OFFSET_MM);
    Optional<Double> below = section.required("below-mm", TOLERANCE_MM);
    Optional<Double> above = section.required("above-mm", TOLERANCE_MM);
    Optional<String> source = section.optional("source", ValueParsers.TEXT);
    Optional<MeantFor> meantFor = section.optional("meant-for", ValueParsers.word(MeantFor.class));
    Optional<String> condition = section.optional("valid-for", ValueParsers.TEXT);
    Optional<OffTargetHints> lookAt = lookAt(section, plane);
    if (!section.has("source")) {
      section.refuse(section.place(), SheetProblem.TARGET_WITHOUT_SOURCE);
    }
    if (below.isPresent() && above.isPresent() && below.get() + above.get() <= 0) {
      section.refuse(section.place("above-mm"), SheetProblem.TARGET_WITHOUT_TOLERANCE);
    }
    return section.build(
        () ->
            new LocatedValue<>(
                new Target(
                    new LandmarkInPlane(plane.orElseThrow(), side, landmark.orElseThrow()),
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
  private static Optional<OffTargetHints> lookAt(Section section, Optional<Plane> plane) {
    OffTargetHints lookAt =
        new OffTargetHints(
            side(section, plane, Plane.SAGITTAL, "too-far-anterior"),
            side(section, plane, Plane.SAGITTAL, "too-far-posterior"),
            side(section, plane, Plane.FRONTAL, "too-far-medial"),
            side(section, plane, Plane.FRONTAL, "too-far-lateral"));
    return lookAt.equals(OffTargetHints.NOTHING) ? Optional.empty() : Optional.of(lookAt);
  }

  private static Optional<String> side(
      Section section, Optional<Plane> plane, Plane of, String key) {
    Optional<String> words = section.optional(key, ValueParsers.TEXT);
    if (section.has(key) && plane.filter(p -> p != of).isPresent()) {
      section.refuse(section.place(key), SheetProblem.SIDE_OF_OTHER_PLANE, Argument.text(key));
    }
    return words;
  }
}
