package caryatid.usecase.prove;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.clinic.KnownPlate;
import caryatid.plate.ProofSheet;
import caryatid.plate.ProofSheetReader;
import caryatid.plate.ShownLoad;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateProof;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.StoreFailure;
import caryatid.sheet.DescriptionReader;
import caryatid.sheet.ProvenDescription;
import caryatid.usecase.Records;
import caryatid.usecase.RememberedPlates;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A proof of a plate that the clinic remembers, one recording after the other. */
public final class GuidedProof {
  private static final String FILE = "plate-proof.yaml";

  private final KnownPlate plate;
  private final ProofSheet sheet;
  private final ProofRecordings recordings;
  private final List<String> taken = new ArrayList<>();

  private GuidedProof(KnownPlate plate, ProofSheet sheet, ProofRecordings recordings) {
    this.plate = plate;
    this.sheet = sheet;
    this.recordings = recordings;
  }

  /** What is recorded next. */
  public enum ProofStep {
    WEIGHT,
    STANDING,
    FORWARD,
    ONE_FOOT,
    DONE
  }

  /**
   * Begins a proof.
   *
   * @param yaml what will be done, as {@link ProofSheetReader} reads it
   * @throws BadInput if it cannot be used, or the description says no axes
   */
  public static GuidedProof of(KnownPlate plate, String yaml) throws BadInput {
    ProofSheet sheet = ProofSheetReader.read(NamedBytes.of(FILE, yaml.getBytes(UTF_8)));
    NamedBytes description = NamedBytes.of(plate.name(), plate.description().getBytes(UTF_8));
    return new GuidedProof(
        plate, sheet, new ProofRecordings(DescriptionReader.read(description), plate.name()));
  }

  /** The plate that is proven. */
  public KnownPlate plate() {
    return plate;
  }

  /** What is recorded next. */
  public synchronized ProofStep step() {
    int weights = sheet.weights().size();
    int behind = taken.size() - weights;
    return behind < 0 ? ProofStep.WEIGHT : ProofStep.values()[1 + behind];
  }

  /** How many recordings were taken. */
  public synchronized int taken() {
    return taken.size();
  }

  /** How many recordings it takes. */
  public int needed() {
    return sheet.recordings().size();
  }

  /** Where the next weight stands, mm to the right and anterior; empty when all were recorded. */
  public synchronized Optional<double[]> place() {
    return taken.size() < sheet.weights().size()
        ? Optional.of(
            new double[] {
              sheet.weights().get(taken.size()).rightMm(),
              sheet.weights().get(taken.size()).anteriorMm()
            })
        : Optional.empty();
  }

  /** Whether the left foot is the one that bears the person alone. */
  public boolean leftFoot() {
    return sheet.person().foot().lateral() < 0;
  }

  /** Where the last recording shows its load, mm to the right and anterior. */
  public synchronized Optional<double[]> lastShown() {
    return taken.isEmpty()
        ? Optional.empty()
        : recordings
            .load(taken.get(taken.size() - 1))
            .map((ShownLoad load) -> new double[] {load.rightMm(), load.anteriorMm()});
  }

  /**
   * Takes the next recording; one that comes when none is needed any more is left out.
   *
   * @throws BadInput if it cannot be used; the step stays
   */
  public synchronized void take(NamedBytes file) throws BadInput {
    if (step() == ProofStep.DONE) {
      return;
    }
    String name = sheet.recordings().get(taken.size());
    recordings.take(name, file);
    taken.add(name);
  }

  /** Drops the last recording, to make it again. */
  public synchronized void back() {
    if (!taken.isEmpty()) {
      recordings.drop(taken.remove(taken.size() - 1));
    }
  }

  /**
   * The proof, kept with the description that the clinic remembers.
   *
   * @throws BadInput with what is wrong with the description
   * @throws StoreFailure if it cannot be kept
   */
  public synchronized PlateProof keep(Records records) throws BadInput, StoreFailure {
    PlateProof proof = recordings.proof(sheet, Place.of(plate.name()));
    RememberedPlates.proven(
        records, ProvenDescription.with(plate.description().getBytes(UTF_8), proof));
    return proof;
  }
}
