package caryatid.sheet;

import caryatid.geometry.Axes;
import caryatid.geometry.Axis;
import caryatid.geometry.Direction;
import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.MeasuringLine;
import caryatid.recording.model.MeasuringLine.Sense;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateDescription.ForceIs;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.PlateProof;
import caryatid.recording.model.TimeBase;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads plate descriptions. */
public final class DescriptionReader {
  private static final String KIND = "plate-description";
  private static final ValueParser<Direction> DIRECTION = ValueParsers.choice(directions());

  private DescriptionReader() {}

  /**
   * Reads a plate description (YAML).
   *
   * @throws BadInput with every problem found, each with its line and column
   */
  public static PlateDescription read(NamedBytes yaml) throws BadInput {
    return Section.read(yaml, KIND, root -> description(root, yaml));
  }

  private static Optional<PlateDescription> description(Section root, NamedBytes yaml) {
    Optional<String> name = root.required("name", ValueParsers.TEXT);
    Optional<ExportLayout> layout = root.optionalSection("export").flatMap(ExportSection::form);
    Optional<TimeBase> time = root.optionalSection("time").flatMap(ExportSection::time);
    Optional<Axes> axes = root.optionalSection("axes").flatMap(DescriptionReader::axes);
    Optional<ForceIs> forceIs = root.optional("force-is", ValueParsers.word(ForceIs.class));
    List<PlateLayout> plates =
        distinct(
            root, "plates", PlateSection::plate, PlateLayout::name, DescriptionProblem.PLATE_TWICE);
    apart(root, plates);
    List<MeasuringLine> lines =
        distinct(
            root,
            "measuring-lines",
            LineSection::line,
            MeasuringLine::name,
            DescriptionProblem.LINE_TWICE);
    Optional<PlateAccuracy> accuracy =
        root.optionalSection("accuracy").flatMap(DescriptionReader::accuracy);
    Optional<Boolean> removeUnloadedOffset =
        root.optional("remove-unloaded-offset", ValueParsers.YES_NO);
    Optional<PlateProof> proof =
        root.optionalSection(ProvenDescription.KEY)
            .flatMap(section -> ProvenDescription.proof(section, yaml));
    return root.build(
        () ->
            new PlateDescription(
                name.orElseThrow(),
                layout.orElse(ExportLayout.UNSTATED),
                time.orElse(TimeBase.UNSTATED),
                axes,
                forceIs,
                plates,
                lines,
                accuracy,
                removeUnloadedOffset.orElse(false),
                proof));
  }

  /** Edges are seen from one zero; those of two plates are not the same ground. */
  private static void apart(Section root, List<PlateLayout> plates) {
    for (int i = 1; i < plates.size(); i++) {
      PlateLayout plate = plates.get(i);
      plates.subList(0, i).stream()
          .filter(before -> overlap(plate, before))
          .forEach(
              before ->
                  root.refuse(
                      root.place("plates"),
                      DescriptionProblem.PLATES_OVERLAP,
                      Argument.text(plate.name()),
                      Argument.text(before.name())));
    }
  }

  private static boolean overlap(PlateLayout one, PlateLayout other) {
    return one.size().isPresent()
        && other.size().isPresent()
        && one.size().get().overlaps(other.size().get());
  }

  private static <T> List<T> distinct(
      Section root,
      String key,
      Function<Section, Optional<T>> reader,
      Function<T, String> name,
      DescriptionProblem twice) {
    Set<String> names = new HashSet<>();
    Function<Section, Optional<T>> named =
        section -> {
          Optional<T> item = reader.apply(section);
          item.map(name)
              .filter(n -> !names.add(n))
              .ifPresent(n -> root.refuse(section.place("name"), twice, Argument.text(n)));
          return item;
        };
    return root.sections(key, named).stream().flatMap(Optional::stream).toList();
  }

  private static Optional<Axes> axes(Section section) {
    Optional<Direction> right = section.required("right", DIRECTION);
    Optional<Direction> anterior = section.required("anterior", DIRECTION);
    Optional<Direction> up = section.required("up", DIRECTION);
    if (right.isPresent() && anterior.isPresent() && up.isPresent()) {
      Set<Axis> used =
          new HashSet<>(List.of(right.get().axis(), anterior.get().axis(), up.get().axis()));
      if (used.size() < 3) {
        section.refuse(section.place(), DescriptionProblem.AXIS_TWICE);
      }
    }
    return section.build(
        () -> new Axes(right.orElseThrow(), anterior.orElseThrow(), up.orElseThrow()));
  }

  /** The accuracy; a section that holds more is built by whoever asks for that. */
  static Optional<PlateAccuracy> accuracy(Section section) {
    Optional<Double> cop = section.required("cop-mm", ValueParsers.number(0, 100));
    Optional<Double> level = section.required("level-deg", ValueParsers.number(0, 10));
    Optional<Double> force = section.required("force-percent", ValueParsers.number(0, 50));
    Optional<Double> lean = section.optional("lean-deg", ValueParsers.number(0, 10));
    return section.build(
        () ->
            new PlateAccuracy(
                cop.orElseThrow(),
                Math.toRadians(level.orElseThrow()),
                force.orElseThrow() / 100,
                lean.map(Math::toRadians).orElse(PlateAccuracy.ASSUMED.leanRad())));
  }

  private static Map<String, Direction> directions() {
    Map<String, Direction> words = new LinkedHashMap<>();
    for (Direction direction : Direction.values()) {
      words.put((direction.sign() > 0 ? "+" : "-") + direction.axis().letter(), direction);
    }
    return words;
  }

  /** Reads one measuring line of a plate description. */
  private static final class LineSection {
    private static final ValueParser<Double> POSITION_MM = ValueParsers.number(-10_000, 10_000);

    private LineSection() {}

    static Optional<MeasuringLine> line(Section section) {
      Optional<String> name = section.required("name", ValueParsers.TEXT);
      Optional<Double> forward = section.optional("forward-from-mm", POSITION_MM);
      Optional<Double> rightward = section.optional("rightward-from-mm", POSITION_MM);
      Optional<Double> registration =
          section.required("registration-mm", ValueParsers.number(0, 100));
      oneSense(section, name.orElse(""));
      return section.build(
          () ->
              new MeasuringLine(
                  name.orElseThrow(),
                  forward.isPresent() ? Sense.FORWARD : Sense.RIGHTWARD,
                  forward.or(() -> rightward).orElseThrow(),
                  registration.orElseThrow()));
    }

    private static void oneSense(Section section, String name) {
      boolean forward = section.has("forward-from-mm");
      boolean rightward = section.has("rightward-from-mm");
      if (forward && rightward) {
        section.refuse(
            section.place(), DescriptionProblem.LINE_IN_BOTH_SENSES, Argument.text(name));
      } else if (!forward && !rightward) {
        section.refuse(section.place(), DescriptionProblem.LINE_WITHOUT_SENSE, Argument.text(name));
      }
    }
  }
}
