package caryatid.plate;

import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.List;

/** Whether a plate shows a person's movements where they go. */
final class PersonMovesCheck {
  /** A lean, or a foot's distance from the middle, is larger (common practice, no source). */
  static final double LEAST_MM = 15;

  private PersonMovesCheck() {}

  static List<Problem> faults(PersonMoves person, Place place) {
    List<Problem> faults = new ArrayList<>();
    double forwardMm = person.forward().anteriorMm() - person.standing().anteriorMm();
    double asideMm = person.forward().rightMm() - person.standing().rightMm();
    double sideMm = person.oneFoot().rightMm() - person.standing().rightMm();
    double alongMm = person.oneFoot().anteriorMm() - person.standing().anteriorMm();
    if (Math.hypot(forwardMm, asideMm) < LEAST_MM || Math.hypot(sideMm, alongMm) < LEAST_MM) {
      faults.add(Problem.at(place, PlateFault.PERSON_STILL, Argument.of(LEAST_MM, Unit.MM)));
      return faults;
    }
    if (forwardMm < Math.max(LEAST_MM, Math.abs(asideMm))) {
      faults.add(
          Problem.at(
              place,
              PlateFault.PERSON_FORWARD,
              Argument.of(forwardMm, Unit.MM),
              Argument.of(asideMm, Unit.MM)));
    }
    if (sideMm * person.foot().lateral() < LEAST_MM) {
      faults.add(
          Problem.at(
              place,
              PlateFault.PERSON_SIDE,
              Argument.term(person.foot()),
              Argument.of(sideMm, Unit.MM)));
    }
    return faults;
  }
}
