package caryatid.usecase.prove;

import caryatid.plate.MarkedWeight;
import caryatid.plate.MeasuredPlate;
import caryatid.plate.PersonMoves;
import caryatid.plate.PlateFault;
import caryatid.plate.PlateTrial;
import caryatid.plate.ProofSheet;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The recordings of a proof as far as they were read, by the names that the sheet gives them. */
final class ProofRecordings {
  private final PlateDescription description;
  private final Map<String, ShownLoad> loads = new LinkedHashMap<>();
  private final Map<String, Provenance> used = new LinkedHashMap<>();

  /**
   * @throws BadInput if the description says no axes
   */
  ProofRecordings(PlateDescription description, String file) throws BadInput {
    if (description.axes().isEmpty()) {
      throw new BadInput(Problem.at(Place.of(file), PlateFault.NO_AXES));
    }
    this.description = description;
  }

  /**
   * Reads one; {@code name} is what the sheet calls it.
   *
   * @throws BadInput if it cannot be used, or if it is a copy of another one
   */
  ShownLoad take(String name, NamedBytes file) throws BadInput {
    Recording recording = Importer.resting(file, description);
    ShownLoad load =
        ShownLoad.of(recording)
            .orElseThrow(
                () ->
                    new BadInput(
                        Problem.at(
                            Place.of(file.name()),
                            PlateFault.NO_LOAD,
                            Argument.text(recording.file()))));
    refuseCopy(name, recording.provenance(), Place.of(file.name()));
    loads.put(name, load);
    used.put(name, recording.provenance());
    return load;
  }

  private void refuseCopy(String name, Provenance read, Place place) throws BadInput {
    for (Map.Entry<String, Provenance> earlier : used.entrySet()) {
      if (earlier.getValue().sha512().equals(read.sha512()) && !earlier.getKey().equals(name)) {
        throw new BadInput(
            Problem.at(
                place,
                PlateFault.RECORDING_COPIED,
                Argument.text(name),
                Argument.text(earlier.getKey())));
      }
    }
  }

  /** Where a recording that was read shows its load. */
  Optional<ShownLoad> load(String name) {
    return Optional.ofNullable(loads.get(name));
  }

  void drop(String name) {
    loads.remove(name);
    used.remove(name);
  }

  /**
   * The proof, once all recordings of the sheet were read.
   *
   * @throws BadInput with what is wrong with the description
   */
  PlateProof proof(ProofSheet sheet, Place place) throws BadInput {
    List<MarkedWeight> marks =
        sheet.weights().stream()
            .map(
                w ->
                    new MarkedWeight(w.rightMm(), w.anteriorMm(), w.kg(), loads.get(w.recording())))
            .toList();
    ProofSheet.Person person = sheet.person();
    PersonMoves moves =
        new PersonMoves(
            loads.get(person.standing()),
            loads.get(person.forward()),
            loads.get(person.oneFoot()),
            person.foot(),
            person.kg());
    PlateTrial.ProofOutcome outcome =
        new PlateTrial(marks, moves, sheet.doubts(), description.axes().orElseThrow(), place)
            .outcome();
    if (!outcome.faults().isEmpty()) {
      throw new BadInput(outcome.faults());
    }
    return new PlateProof(
        sheet.at(),
        sheet.by(),
        sheet.meanKg(),
        sheet.bodyKg(),
        outcome.accuracy(),
        outcome.plates().stream().map(MeasuredPlate::shown).toList(),
        List.copyOf(used.values()));
  }
}
