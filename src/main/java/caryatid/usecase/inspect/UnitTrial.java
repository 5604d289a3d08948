package caryatid.usecase.inspect;

import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.ImportFact;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.model.MomentUnit;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.UnderstoodFact;
import caryatid.recording.model.UnderstoodFact.Basis;
import caryatid.remark.Argument;
import caryatid.remark.Coded;
import caryatid.remark.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds open units by trial: of the units a file could have, those under which the recording would
 * be refused are ruled out.
 */
final class UnitTrial {
  /** Units of all plates, as far as they were open. */
  private record OpenUnits(
      Optional<ForceUnit> force, Optional<MomentUnit> moment, Optional<LengthUnit> cop) {}

  private final NamedBytes export;
  private final Inspection inspection;

  private UnitTrial(NamedBytes export, Inspection inspection) {
    this.export = export;
    this.inspection = inspection;
  }

  /** The same with the units that are the only possible ones. */
  static Inspection answered(NamedBytes export, Inspection inspection) {
    UnitTrial trial = new UnitTrial(export, inspection);
    boolean open =
        Stream.of(ImportProblem.FORCE_UNIT, ImportProblem.MOMENT_UNIT, ImportProblem.COP_UNIT)
            .anyMatch(trial::asks);
    boolean otherwiseKnown =
        inspection.problems().isEmpty()
            && inspection.rateHz().isPresent()
            && inspection.questions().stream().noneMatch(UnitTrial::forbids);
    return open && otherwiseKnown ? trial.answered() : inspection;
  }

  private boolean asks(ImportProblem question) {
    return inspection.questions().stream().anyMatch(q -> q.topic() == question);
  }

  /** Whether nothing can be tried while a question is open. */
  private static boolean forbids(Problem question) {
    return !List.of(
            ImportProblem.FORCE_UNIT,
            ImportProblem.MOMENT_UNIT,
            ImportProblem.COP_UNIT,
            ImportProblem.AXES,
            ImportProblem.TRUE_ORIGIN,
            ImportProblem.EXPORT_ORIGIN)
        .contains(question.topic());
  }

  private Inspection answered() {
    List<OpenUnits> passing =
        all().stream().filter(u -> StandTrial.passes(export, with(u))).toList();
    OpenUnits only =
        new OpenUnits(
            only(passing.stream().flatMap(u -> u.force().stream()).distinct().toList()),
            only(passing.stream().flatMap(u -> u.moment().stream()).distinct().toList()),
            only(passing.stream().flatMap(u -> u.cop().stream()).distinct().toList()));
    List<UnderstoodFact> understood = new ArrayList<>(inspection.understood());
    for (PlateLayout plate : inspection.draft().plates()) {
      only.force().ifPresent(unit -> understood.add(fact(plate, Quantity.FORCE, unit)));
      only.moment().ifPresent(unit -> understood.add(fact(plate, Quantity.MOMENT, unit)));
      only.cop().ifPresent(unit -> understood.add(fact(plate, Quantity.COP, unit)));
    }
    return new Inspection(
        understood,
        inspection.questions().stream().filter(q -> !answers(only, q)).toList(),
        inspection.problems(),
        inspection.remarks(),
        inspection.plates(),
        inspection.rateHz(),
        with(only),
        inspection.sampled());
  }

  private static boolean answers(OpenUnits units, Problem question) {
    return (question.topic() == ImportProblem.FORCE_UNIT && units.force().isPresent())
        || (question.topic() == ImportProblem.MOMENT_UNIT && units.moment().isPresent())
        || (question.topic() == ImportProblem.COP_UNIT && units.cop().isPresent());
  }

  private static <U> Optional<U> only(List<U> units) {
    return units.size() == 1 ? Optional.of(units.get(0)) : Optional.empty();
  }

  private static UnderstoodFact fact(PlateLayout plate, Quantity quantity, Coded unit) {
    return new UnderstoodFact(
        ImportFact.UNIT,
        List.of(Argument.text(plate.name()), Argument.term(quantity), Argument.term(unit)),
        Basis.CONCLUDED);
  }

  private List<OpenUnits> all() {
    List<OpenUnits> all = new ArrayList<>();
    for (Optional<ForceUnit> force : options(ImportProblem.FORCE_UNIT, ForceUnit.values())) {
      for (Optional<MomentUnit> moment : options(ImportProblem.MOMENT_UNIT, MomentUnit.values())) {
        for (Optional<LengthUnit> cop : options(ImportProblem.COP_UNIT, LengthUnit.values())) {
          all.add(new OpenUnits(force, moment, cop));
        }
      }
    }
    return all;
  }

  private <U> List<Optional<U>> options(ImportProblem question, U[] units) {
    return asks(question)
        ? Arrays.stream(units).map(Optional::of).toList()
        : List.of(Optional.empty());
  }

  /** The draft with units where it has none. */
  private PlateDescription with(OpenUnits units) {
    PlateDescription draft = inspection.draft();
    List<PlateLayout> plates =
        draft.plates().stream()
            .map(
                plate ->
                    new PlateLayout(
                        plate.name(),
                        plate.columns(),
                        plate.copUnit().or(units::cop),
                        plate.forceUnit().or(units::force),
                        plate.momentUnit().or(units::moment),
                        plate.size(),
                        plate.trueOrigin(),
                        plate.exportOrigin(),
                        plate.sensors(),
                        plate.measures()))
            .toList();
    return draft.with(draft.axes(), plates);
  }
}
