package caryatid.sheet;

import caryatid.geometry.Plane;
import caryatid.loadline.Coordinate;
import caryatid.loadline.Landmark;
import caryatid.recording.model.MeasuringLine;
import caryatid.recording.model.MeasuringLine.Sense;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.LandmarkEntry.MeasuredDistance;
import caryatid.sheet.yaml.NameSuggester;
import caryatid.sheet.yaml.ValueParsers;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Brings a sheet's landmarks into the person's frame. */
public final class Landmarks {
  private final LandmarkReferences relations;
  private final List<MeasuringLine> lines;

  private Landmarks(LandmarkReferences relations, List<MeasuringLine> lines) {
    this.relations = relations;
    this.lines = lines;
  }

  /**
   * The landmarks in the person's frame. A coordinate carries the doubt of its own marking, of the
   * registration of the line it was measured from, and all doubts of the landmark it was measured
   * from; the stated standard uncertainties are taken as known (infinite degrees of freedom, JCGM
   * 100:2008, G.4.2).
   *
   * @param entries as the sheet has them
   * @param lines the measuring lines of the plate description
   * @param sheet the sheet, for problems
   * @throws BadInput if a line or a landmark that one is measured from does not exist or does not
   *     give that direction, or landmarks are relative to each other in a circle
   */
  public static List<Landmark> place(
      List<LandmarkEntry> entries, List<MeasuringLine> lines, Place sheet) throws BadInput {
    Landmarks landmarks = new Landmarks(new LandmarkReferences(entries), lines);
    List<Problem> problems = new ArrayList<>(landmarks.relations.problems(entry -> sheet));
    for (LandmarkEntry entry : entries) {
      Stream.of(Plane.values())
          .flatMap(p -> landmarks.problem(entry, p, sheet))
          .forEach(problems::add);
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    return entries.stream().map(landmarks::placed).toList();
  }

  private Stream<Problem> problem(LandmarkEntry entry, Plane plane, Place sheet) {
    Optional<String> name = lineName(entry, plane);
    if (name.isEmpty() || line(name.get(), plane).isPresent()) {
      return Stream.empty();
    }
    Argument own = Argument.text(entry.name());
    Argument other = Argument.text(name.get());
    if (lines.stream().anyMatch(l -> l.name().equals(name.get()))) {
      return Stream.of(Problem.at(sheet, LandmarkProblem.LINE_OF_OTHER_SENSE, own, other));
    }
    return Stream.of(
        NameSuggester.by(name.get(), lines.stream().map(MeasuringLine::name).toList())
            .map(
                m ->
                    Problem.at(
                        sheet, LandmarkProblem.LINE_UNKNOWN_MEANT, own, other, Argument.text(m)))
            .orElseGet(() -> Problem.at(sheet, LandmarkProblem.LINE_UNKNOWN, own, other)));
  }

  private Landmark placed(LandmarkEntry entry) {
    return new Landmark(
        entry.name(),
        entry.kind(),
        entry.side(),
        coordinate(entry, Plane.FRONTAL),
        coordinate(entry, Plane.SAGITTAL),
        entry.upMm(),
        entry.definition());
  }

  private Optional<Coordinate> coordinate(LandmarkEntry entry, Plane plane) {
    return entry.in(plane).map(measured -> coordinate(entry, plane, measured));
  }

  private Coordinate coordinate(LandmarkEntry entry, Plane plane, MeasuredDistance measured) {
    Coordinate start = start(entry, plane);
    List<Contribution> doubts = new ArrayList<>(start.doubts());
    String label =
        entry.name()
            + " "
            + ValueParsers.lower(entry.side().lastPart())
            + " "
            + ValueParsers.lower(plane.lastPart());
    doubts.add(known(Cause.MARKING, label, measured.markingMm(), measured.markingDegrees()));
    return new Coordinate(start.mm() + measured.mm(), doubts);
  }

  /** Where the ruler's zero was: at another landmark, a line, or the frame's origin. */
  private Coordinate start(LandmarkEntry entry, Plane plane) {
    return relations
        .reference(entry, plane)
        .flatMap(other -> coordinate(other, plane))
        .or(() -> lineName(entry, plane).flatMap(name -> line(name, plane)).map(Landmarks::on))
        .orElseGet(() -> new Coordinate(0, List.of()));
  }

  private static Coordinate on(MeasuringLine line) {
    return new Coordinate(
        line.positionMm(),
        List.of(
            known(
                Cause.REGISTRATION,
                line.name(),
                line.registrationMm(),
                Contribution.STATED_DEGREES)));
  }

  private static Contribution known(
      Cause cause, String of, double standardUncertaintyMm, double degrees) {
    return new Contribution(new Source(cause, of), standardUncertaintyMm, 1, degrees);
  }

  private Optional<MeasuringLine> line(String name, Plane plane) {
    Sense sense = plane == Plane.SAGITTAL ? Sense.FORWARD : Sense.RIGHTWARD;
    return lines.stream().filter(l -> l.name().equals(name) && l.sense() == sense).findFirst();
  }

  private static Optional<String> lineName(LandmarkEntry entry, Plane plane) {
    return entry.in(plane).filter(m -> !m.fromLandmark()).flatMap(MeasuredDistance::from);
  }
}
