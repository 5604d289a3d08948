package caryatid.sheet;

import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.sheet.yaml.LocatedValue;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParsers;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Refuses what a heel's height contradicts. */
final class HeelCheck {
  private static final Set<String> BAREFOOT =
      Set.of("barefoot", "barfu\u00df", "barfuss", "pieds nus", "nu-pieds", "descalzo", "descalza");

  private HeelCheck() {}

  static void check(Section root, Optional<Footwear> footwear, Optional<TrialSheet> earlier) {
    if (footwear.isEmpty()) {
      return;
    }
    double heelMm = footwear.get().heelHeightMm();
    if (heelMm != 0
        && BAREFOOT.contains(footwear.get().description().strip().toLowerCase(Locale.ROOT))) {
      root.refuse(
          root.place("footwear"), SheetProblem.BAREFOOT_WITH_HEEL, Argument.of(heelMm, Unit.MM));
    }
    earlier
        .map(sheet -> sheet.footwear().heelHeightMm())
        .filter(before -> Math.abs(before - heelMm) > Footwear.OTHER_HEEL_MM)
        .ifPresent(before -> refuseConfirmed(root, before, heelMm));
  }

  /** Every landmark moves when the heel is another: none of the earlier ones can still be true. */
  private static void refuseConfirmed(Section root, double beforeMm, double heelMm) {
    for (LocatedValue<String> name : root.list("confirmed", ValueParsers.TEXT.located())) {
      root.refuse(
          name.place(),
          SheetProblem.CONFIRMED_ON_OTHER_HEEL,
          Argument.text(name.value()),
          Argument.of(beforeMm, Unit.MM),
          Argument.of(heelMm, Unit.MM));
    }
  }
}
