package caryatid.usecase.prove;

import caryatid.plate.PlateFault;
import caryatid.plate.ProofSheet;
import caryatid.plate.ProofSheetReader;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateProof;
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
  private ProvePlate() {}

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
    ProofRecordings recordings =
        new ProofRecordings(DescriptionReader.read(description), description.name());
    ProofSheet done = ProofSheetReader.read(sheet);
    Place place = Place.of(sheet.name());
    List<Problem> problems = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (String name : done.recordings()) {
      if (names.add(name)) {
        take(recordings, name, beside.apply(name), place, problems);
      } else {
        problems.add(Problem.at(place, PlateFault.RECORDING_TWICE, Argument.text(name)));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    PlateProof proof = recordings.proof(done, place);
    return new Proven(proof, ProvenDescription.with(description.readAll(), proof));
  }

  private static void take(
      ProofRecordings recordings,
      String name,
      Optional<NamedBytes> file,
      Place place,
      List<Problem> problems) {
    if (file.isEmpty()) {
      problems.add(Problem.at(place, PlateFault.NO_RECORDING, Argument.text(name)));
      return;
    }
    try {
      recordings.take(name, file.get());
    } catch (BadInput e) {
      e.problems().stream().filter(problem -> isNew(problem, problems)).forEach(problems::add);
    }
  }

  /** What is wrong with one recording is mostly wrong with all; it is said once. */
  private static boolean isNew(Problem problem, List<Problem> problems) {
    return problems.stream()
        .noneMatch(
            known ->
                known.topic() == problem.topic() && known.arguments().equals(problem.arguments()));
  }
}
