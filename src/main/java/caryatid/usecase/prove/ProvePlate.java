package caryatid.usecase.prove;

import caryatid.geometry.Axes;
import caryatid.plate.MarkedWeight;
import caryatid.plate.MeasuredPlate;
import caryatid.plate.PersonMoves;
import caryatid.plate.PlateFault;
import caryatid.plate.PlateTrial;
import caryatid.plate.ProofSheet;
import caryatid.plate.ProofSheetReader;
import caryatid.plate.ShownLoad;
import caryatid.recording.importer.Importer;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateProof;
import caryatid.recording.model.Provenance;
import caryatid.recording.model.Recording;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.DescriptionReader;
import caryatid.sheet.ProvenDescription;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Proves a plate's description by recordings of known weights and of a person. */
public final class ProvePlate {
  private final PlateDescription description;
  private final Function<String, Optional<NamedBytes>> beside;
  private final Place sheet;
  private final List<Provenance> used = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  private ProvePlate(
      PlateDescription description, Function<String, Optional<NamedBytes>> beside, Place sheet) {
    this.description = description;
    this.beside = beside;
    this.sheet = sheet;
  }

  /**
   * A proven description.
   *
   * @param proof what was found
   * @param description the description's bytes with the proof at their end
   */
  public record Proven(PlateProof proof, byte[] description) {}

  /**
   * Proves a description.
   *
   * @param description the plate description (YAML)
   * @param sheet what was done (YAML)
   * @param beside finds a recording by the name that the sheet gives
   * @throws BadInput with what is wrong with the description, as far as the recordings show it, or
   *     with an input
   */
  public static Proven run(
      NamedBytes description, NamedBytes sheet, Function<String, Optional<NamedBytes>> beside)
      throws BadInput {
    PlateDescription plate = DescriptionReader.read(description);
    ProofSheet done = ProofSheetReader.read(sheet);
    Place place = Place.of(sheet.name());
    Axes axes =
        plate
            .axes()
            .orElseThrow(
                () -> new BadInput(Problem.at(Place.of(description.name()), PlateFault.NO_AXES)));
    ProvePlate proving = new ProvePlate(plate, beside, place);
    PlateTrial trial = proving.trial(done, axes);
    PlateTrial.ProofOutcome outcome = trial.outcome();
    if (!outcome.faults().isEmpty()) {
      throw new BadInput(outcome.faults());
    }
    PlateProof proof =
        new PlateProof(
            done.at(),
            done.by(),
            done.meanKg(),
            done.bodyKg(),
            outcome.accuracy(),
            outcome.plates().stream().map(MeasuredPlate::shown).toList(),
            proving.used);
    return new Proven(proof, ProvenDescription.with(description.readAll(), proof));
  }

  private PlateTrial trial(ProofSheet done, Axes axes) throws BadInput {
    Set<String> names = new HashSet<>();
    for (String name : done.recordings()) {
      if (!names.add(name)) {
        problems.add(Problem.at(sheet, PlateFault.RECORDING_TWICE, Argument.text(name)));
      }
    }
    List<Optional<MarkedWeight>> marks = new ArrayList<>();
    for (ProofSheet.PlacedWeight weight : done.weights()) {
      marks.add(
          shown(weight.recording())
              .map(
                  load ->
                      new MarkedWeight(weight.rightMm(), weight.anteriorMm(), weight.kg(), load)));
    }
    ProofSheet.Person person = done.person();
    Optional<ShownLoad> standing = shown(person.standing());
    Optional<ShownLoad> forward = shown(person.forward());
    Optional<ShownLoad> oneFoot = shown(person.oneFoot());
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    PersonMoves moves =
        new PersonMoves(
            standing.orElseThrow(),
            forward.orElseThrow(),
            oneFoot.orElseThrow(),
            person.foot(),
            person.kg());
    return new PlateTrial(
        marks.stream().flatMap(Optional::stream).toList(), moves, done.doubts(), axes, sheet);
  }

  /** Where a recording shows its load; what keeps it from being read is noted. */
  private Optional<ShownLoad> shown(String name) {
    Optional<NamedBytes> file = beside.apply(name);
    if (file.isEmpty()) {
      problems.add(Problem.at(sheet, PlateFault.NO_RECORDING, Argument.text(name)));
      return Optional.empty();
    }
    try {
      Recording recording = Importer.resting(file.get(), description);
      used.add(recording.provenance());
      Optional<ShownLoad> load = ShownLoad.of(recording);
      if (load.isEmpty()) {
        problems.add(Problem.at(sheet, PlateFault.NO_LOAD, Argument.text(name)));
      }
      return load;
    } catch (BadInput e) {
      e.problems().stream().filter(this::isNew).forEach(problems::add);
      return Optional.empty();
    }
  }

  /** What is wrong with one recording is mostly wrong with all; it is said once. */
  private boolean isNew(Problem problem) {
    return problems.stream()
        .noneMatch(
            known ->
                known.topic() == problem.topic() && known.arguments().equals(problem.arguments()));
  }
}
