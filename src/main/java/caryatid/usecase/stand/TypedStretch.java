package caryatid.usecase.stand;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.standing.NamedStretch;
import caryatid.standing.Stretch;
import caryatid.usecase.stand.StandDraft.Arrived;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The stretches that somebody set by hand, one for a recording. */
final class TypedStretch {
  private TypedStretch() {}

  /**
   * Those of some recordings.
   *
   * @throws BadInput at the field in which there is no number, or at the first of two that end
   *     before they begin
   */
  static List<NamedStretch> of(Map<String, String> fields, List<Arrived> recordings)
      throws BadInput {
    List<NamedStretch> set = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Arrived arrived : recordings) {
      try {
        of(fields, arrived.number(), arrived.file().name())
            .ifPresent(stretch -> set.add(new NamedStretch(arrived.file().name(), stretch)));
      } catch (BadInput e) {
        problems.addAll(e.problems());
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    return set;
  }

  private static Optional<Stretch> of(Map<String, String> fields, int number, String file)
      throws BadInput {
    String fromField = StandFields.ofRecording(StandFields.FROM_S, number);
    Optional<Double> from = seconds(fields, fromField, file);
    Optional<Double> to = seconds(fields, StandFields.ofRecording(StandFields.TO_S, number), file);
    if (from.isEmpty() && to.isEmpty()) {
      return Optional.empty();
    }
    double fromS = from.orElse(Double.NEGATIVE_INFINITY);
    double toS = to.orElse(Double.POSITIVE_INFINITY);
    if (!(toS > fromS)) {
      Argument name = Argument.text(file);
      throw new BadInput(Problem.at(Place.of(fromField), StandFault.STRETCH_REVERSED, name));
    }
    return Optional.of(new Stretch(fromS, toS));
  }

  private static Optional<Double> seconds(Map<String, String> fields, String name, String file)
      throws BadInput {
    Optional<String> typed =
        Optional.ofNullable(fields.get(name))
            .filter(text -> !text.isBlank())
            .map(TypedNumber::plain);
    if (typed.isPresent() && !TypedNumber.isPlain(typed.get())) {
      throw new BadInput(Problem.at(Place.of(name), StandFault.NO_SECONDS, Argument.text(file)));
    }
    return typed.map(Double::valueOf);
  }
}
