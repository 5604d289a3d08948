package caryatid.usecase.stand;

import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.standing.Stretch;
import java.util.Map;
import java.util.Optional;

/** The stretch of a recording that somebody set by hand. */
final class TypedStretch {
  private TypedStretch() {}

  static Optional<Stretch> of(Map<String, String> fields) throws BadInput {
    Optional<Double> from = seconds(fields, StandFields.FROM_S);
    Optional<Double> to = seconds(fields, StandFields.TO_S);
    if (from.isEmpty() && to.isEmpty()) {
      return Optional.empty();
    }
    double fromS = from.orElse(Double.NEGATIVE_INFINITY);
    double toS = to.orElse(Double.POSITIVE_INFINITY);
    if (!(toS > fromS)) {
      throw new BadInput(Problem.at(Place.of(StandFields.FROM_S), StandFault.STRETCH_REVERSED));
    }
    return Optional.of(new Stretch(fromS, toS));
  }

  private static Optional<Double> seconds(Map<String, String> fields, String name) throws BadInput {
    Optional<String> typed =
        Optional.ofNullable(fields.get(name))
            .filter(text -> !text.isBlank())
            .map(TypedNumber::plain);
    if (typed.isPresent() && !TypedNumber.isPlain(typed.get())) {
      throw new BadInput(Problem.at(Place.of(name), StandFault.NO_SECONDS));
    }
    return typed.map(Double::valueOf);
  }
}
