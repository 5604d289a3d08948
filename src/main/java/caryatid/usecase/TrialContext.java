package caryatid.usecase;

import caryatid.alignment.Stand;
import caryatid.loadline.AssumedUncertainties;
import caryatid.loadline.GeometryCheck;
import caryatid.loadline.Landmark;
import caryatid.loadline.LoadLineCheck;
import caryatid.loadline.LoadLineResult;
import caryatid.loadline.ReadMoments;
import caryatid.loadline.StanceConditions;
import caryatid.loadline.UseLimits;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout.ExportOrigin;
import caryatid.recording.model.Provenance;
import caryatid.recording.model.Recording;
import caryatid.recording.model.RecordingRemark;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.sheet.DescriptionReader;
import caryatid.sheet.Hands;
import caryatid.sheet.KneeSetting;
import caryatid.sheet.Landmarks;
import caryatid.sheet.OtherFoot;
import caryatid.sheet.TrialSheet;
import caryatid.sheet.TrialSheetReader;
import caryatid.standing.Leaning;
import caryatid.standing.NamedStretch;
import caryatid.standing.Stance;
import caryatid.standing.StandAnalysis;
import caryatid.standing.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is the same for every stand of one state: the sheet, the plate and what follows from both.
 *
 * @param sheet the sheet's bytes
 * @param description the description's bytes
 * @param trial what the sheet says
 * @param plate what the description says
 * @param landmarks in the person's frame
 * @param byHand which part of a recording is used, where the sheet or the user set it
 */
record TrialContext(
    Provenance sheet,
    Optional<Provenance> description,
    TrialSheet trial,
    Optional<PlateDescription> plate,
    List<Landmark> landmarks,
    List<NamedStretch> byHand) {

  static TrialContext read(Inputs inputs, EarlierSheetFinder beside) throws BadInput {
    TrialSheet trial = TrialSheetReader.read(inputs.sheet(), beside);
    if (inputs.description().isEmpty()) {
      needNoLines(trial, inputs.sheet());
    }
    Optional<PlateDescription> plate = Optional.empty();
    Optional<Provenance> description = Optional.empty();
    if (inputs.description().isPresent()) {
      NamedBytes file = inputs.description().get();
      plate = Optional.of(DescriptionReader.read(file));
      description = Optional.of(Provenance.of(file));
    }
    List<Landmark> landmarks =
        Landmarks.place(
            trial.landmarks(),
            plate.map(PlateDescription::lines).orElse(List.of()),
            Place.of(inputs.sheet().name()));
    return new TrialContext(
        Provenance.of(inputs.sheet()),
        description,
        trial,
        plate,
        landmarks,
        stretches(inputs, trial));
  }

  /** Those of the sheet and those beside it: one for a recording at most, and none for others. */
  private static List<NamedStretch> stretches(Inputs inputs, TrialSheet trial) throws BadInput {
    List<String> recordings =
        inputs.recordings().stream().map(file -> Provenance.fileName(file.name())).toList();
    List<NamedStretch> all = new ArrayList<>(trial.stretches());
    List<Problem> problems = new ArrayList<>();
    Place sheet = Place.of(inputs.sheet().name());
    for (NamedStretch set : inputs.byHand()) {
      if (NamedStretch.of(set.recording(), all).isPresent()) {
        Argument name = Argument.text(set.recording());
        problems.add(Problem.at(sheet, CheckProblem.STRETCH_SET_TWICE, name));
      }
      all.add(set);
    }
    for (NamedStretch set : all) {
      if (!recordings.contains(set.recording())) {
        Argument name = Argument.text(set.recording());
        Argument there = Argument.text(String.join(", ", recordings));
        problems.add(Problem.at(sheet, CheckProblem.STRETCH_WITHOUT_RECORDING, name, there));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    return all;
  }

  private static void needNoLines(TrialSheet trial, NamedBytes sheet) throws BadInput {
    String lines =
        trial.landmarks().stream()
            .flatMap(entry -> Stream.of(entry.forward(), entry.rightward()))
            .flatMap(Optional::stream)
            .filter(measured -> !measured.fromLandmark())
            .flatMap(measured -> measured.from().stream())
            .distinct()
            .collect(Collectors.joining(", "));
    if (!lines.isEmpty()) {
      Argument names = Argument.text(lines);
      throw new BadInput(
          Problem.at(Place.of(sheet.name()), CheckProblem.LINES_WITHOUT_DESCRIPTION, names));
    }
  }

  /**
   * The same, the landmarks freed from the swing of the moments at which the sheet says they were
   * read.
   *
   * @param first the state's first recording
   */
  TrialContext readIn(Recording first) throws BadInput {
    if (trial.landmarks().stream().allMatch(entry -> entry.readAtS().isEmpty())) {
      return this;
    }
    StandAnalysis.Conditions conditions = analysisConditions(first);
    Standing standing = StandAnalysis.analyse(first, conditions);
    List<Landmark> swungBack = new ArrayList<>();
    for (int i = 0; i < landmarks.size(); i++) {
      List<Double> atS = trial.landmarks().get(i).readAtS();
      swungBack.add(
          atS.isEmpty()
              ? landmarks.get(i)
              : ReadMoments.swungBack(
                  landmarks.get(i), Leaning.at(first, conditions, standing, atS), doubts()));
    }
    return new TrialContext(sheet, description, trial, plate, swungBack, byHand);
  }

  Stand stand(Recording recording) throws BadInput {
    Standing standing = StandAnalysis.analyse(recording, analysisConditions(recording));
    StanceConditions how = stanceConditions();
    LoadLineResult past = LoadLineCheck.evaluate(standing, landmarks, how);
    new GeometryCheck(standing, past.offsets(), landmarks, how.prostheticKnee(), trial.limits())
        .requirePossible(how);
    List<Remark> remarks =
        Stream.of(recording.remarks(), standing.remarks(), past.remarks(), List.of(proven()))
            .flatMap(List::stream)
            .toList();
    return new Stand(
        recording.provenance(),
        sheet,
        description,
        trial,
        landmarks,
        standing,
        past.offsets(),
        past.moments(),
        remarks);
  }

  private Remark proven() {
    return plate
        .flatMap(PlateDescription::proof)
        .map(
            proof ->
                Remark.of(
                    RecordingRemark.PROVEN,
                    Argument.text(proof.at().toLocalDate().toString()),
                    Argument.text(proof.by())))
        .orElse(Remark.of(RecordingRemark.UNPROVEN));
  }

  /** How far the plates' zeros lie apart, to the right, where each foot has a plate of its own. */
  OptionalDouble platesApartMm() {
    if (!(trial.stance() instanceof Stance.PlatePerFoot feet)) {
      return OptionalDouble.empty();
    }
    Optional<ExportOrigin> left = zero(feet.leftPlate());
    Optional<ExportOrigin> right = zero(feet.rightPlate());
    return left.isPresent() && right.isPresent()
        ? OptionalDouble.of(right.get().rightMm() - left.get().rightMm())
        : OptionalDouble.empty();
  }

  private Optional<ExportOrigin> zero(String name) {
    return plate.stream()
        .flatMap(description -> description.plates().stream())
        .filter(layout -> layout.name().equals(name))
        .flatMap(layout -> layout.exportOrigin().stream())
        .findFirst();
  }

  AssumedUncertainties doubts() {
    PlateAccuracy known = accuracy();
    return trial.doubts().withLevel(known.levelRad(), known.degrees().level());
  }

  private PlateAccuracy accuracy() {
    return plate.map(PlateDescription::known).orElse(PlateAccuracy.ASSUMED);
  }

  private StandAnalysis.Conditions analysisConditions(Recording recording) {
    return new StandAnalysis.Conditions(
        trial.stance(),
        trial.side().sides(),
        trial.bodyMassKg(),
        accuracy(),
        NamedStretch.of(recording.provenance().name(), byHand));
  }

  private StanceConditions stanceConditions() {
    Optional<OtherFoot> other = trial.otherFoot();
    return new StanceConditions(
        Place.of(sheet.name()),
        trial.stance(),
        trial.side().sides(),
        trial.level().prostheticKnee(),
        trial.knee().map(KneeSetting::locked).orElse(false),
        trial.hands() == Hands.TOUCHING,
        trial.hands() == Hands.HOLDING,
        other.map(foot -> foot.on() == OtherFoot.Ground.FLOOR).orElse(false),
        other
            .map(foot -> OptionalDouble.of(foot.heightDifferenceMm()))
            .orElse(OptionalDouble.empty()),
        trial.bodyMassKg(),
        doubts(),
        UseLimits.USUAL);
  }
}
