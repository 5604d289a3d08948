package caryatid.sheet;

import caryatid.remark.Argument;
import caryatid.remark.Coded;
import caryatid.sheet.OtherFoot.Ground;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import caryatid.standing.Stance;
import caryatid.standing.Stance.BothFeetOnOnePlate;
import caryatid.standing.Stance.PlatePerFoot;
import caryatid.standing.Stance.ProstheticFootOnPlate;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads the section of a trial sheet about how the wearer stood. */
final class StanceSection {
  private static final ValueParser<StanceKind> KIND = ValueParsers.word(StanceKind.class);

  private StanceSection() {}

  private enum StanceKind implements Coded {
    PROSTHETIC_FOOT_ON_PLATE("Stance.PROSTHETIC_FOOT_ON_PLATE"),
    ONE_PLATE_PER_FOOT("Stance.ONE_PLATE_PER_FOOT"),
    BOTH_FEET_ON_ONE_PLATE("Stance.BOTH_FEET_ON_ONE_PLATE");

    private final String code;

    StanceKind(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  static Optional<Stance> stance(Section section, Optional<ProstheticSide> prosthetic) {
    Optional<StanceKind> kind = section.required("kind", KIND);
    if (kind.isEmpty()) {
      Stream.of("plate", "left", "right").forEach(section::has);
      section.build(() -> kind);
      return Optional.empty();
    }
    if (kind.get() == StanceKind.ONE_PLATE_PER_FOOT) {
      return platePerFoot(section);
    }
    Optional<String> plate = section.optional("plate", ValueParsers.TEXT);
    if (kind.get() == StanceKind.BOTH_FEET_ON_ONE_PLATE) {
      return section.build(() -> new BothFeetOnOnePlate(plate));
    }
    if (prosthetic.equals(Optional.of(ProstheticSide.BOTH))) {
      section.refuse(section.place("kind"), SheetProblem.FOOT_OF_TWO_PROSTHESES);
    }
    return section.build(() -> new ProstheticFootOnPlate(plate));
  }

  private static Optional<Stance> platePerFoot(Section section) {
    Optional<String> left = section.required("left", ValueParsers.TEXT);
    Optional<String> right = section.required("right", ValueParsers.TEXT);
    if (left.isPresent() && left.equals(right)) {
      section.refuse(
          section.place("right"), SheetProblem.SAME_PLATE_TWICE, Argument.text(left.get()));
    }
    return section.build(() -> new PlatePerFoot(left.orElseThrow(), right.orElseThrow()));
  }

  /** Required where the other foot is on no plate of its own, refused elsewhere. */
  static Optional<OtherFoot> otherFoot(Section root, Optional<Stance> stance) {
    if (stance.isPresent() && !(stance.get() instanceof ProstheticFootOnPlate)) {
      root.without("other-foot", SheetProblem.OTHER_FOOT_ON_PLATE);
      return Optional.empty();
    }
    Optional<Section> section =
        stance.isPresent()
            ? root.requiredSection("other-foot")
            : root.optionalSection("other-foot");
    return section.flatMap(StanceSection::otherFoot);
  }

  private static Optional<OtherFoot> otherFoot(Section section) {
    Optional<Ground> on = section.required("on", ValueParsers.word(Ground.class));
    Optional<Double> height =
        section.required("height-difference-mm", ValueParsers.number(-500, 500));
    return section.build(() -> new OtherFoot(on.orElseThrow(), height.orElseThrow()));
  }
}
