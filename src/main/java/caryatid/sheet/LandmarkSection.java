package caryatid.sheet;

import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import caryatid.remark.Argument;
import caryatid.sheet.LandmarkEntry.MeasuredDistance;
import caryatid.sheet.yaml.LocatedValue;
import caryatid.sheet.yaml.NameSuggester;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads one landmark of a trial sheet. */
final class LandmarkSection {
  private static final ValueParser<Double> DISTANCE_MM = ValueParsers.number(-5_000, 5_000);
  private static final Map<String, LandmarkKind> KINDS = kinds();

  private final Section section;
  private final Optional<Double> marking;
  private final Optional<String> landmark;

  private LandmarkSection(Section section) {
    this.section = section;
    this.marking = section.required("marking-mm", ValueParsers.number(0, 100));
    this.landmark = section.optional("landmark", ValueParsers.TEXT);
  }

  static Optional<LocatedValue<LandmarkEntry>> entry(
      Section section, Optional<ProstheticSide> prosthetic) {
    return new LandmarkSection(section).entry(prosthetic);
  }

  private Optional<LocatedValue<LandmarkEntry>> entry(Optional<ProstheticSide> prosthetic) {
    Optional<String> name = section.required("name", ValueParsers.TEXT);
    Optional<String> kind = section.optional("kind", ValueParsers.choice(Map.of("other", "other")));
    name.ifPresent(n -> checkName(n, kind.isPresent()));
    Side side = SideReader.of(section, prosthetic);
    Optional<MeasuredDistance> forward = measured("forward");
    Optional<MeasuredDistance> rightward = measured("rightward");
    Optional<Double> up = section.required("up-mm", ValueParsers.number(-500, 3_000));
    Optional<String> definition = section.optional("is", ValueParsers.TEXT);
    checkDistances();
    return section.build(
        () ->
            new LocatedValue<>(
                new LandmarkEntry(
                    name.orElseThrow(),
                    KINDS.getOrDefault(name.orElseThrow(), LandmarkKind.OTHER),
                    side,
                    forward,
                    rightward,
                    up.orElseThrow(),
                    definition),
                section.place()));
  }

  private Optional<MeasuredDistance> measured(String way) {
    Optional<Double> plain = section.optional(way + "-mm", DISTANCE_MM);
    Optional<String> from = section.optional(way + "-from", ValueParsers.TEXT);
    Optional<Double> relative = section.optional(way + "-of-landmark-mm", DISTANCE_MM);
    if (section.has(way + "-mm") && section.has(way + "-of-landmark-mm")) {
      section.refuse(
          section.place(way + "-of-landmark-mm"),
          SheetProblem.TWO_WAYS_TO_MEASURE,
          Argument.text(way));
    }
    if (section.has(way + "-from") && !section.has(way + "-mm")) {
      section.refuse(
          section.place(way + "-from"), SheetProblem.FROM_WITHOUT_DISTANCE, Argument.text(way));
    }
    double markingMm = marking.orElse(0.0);
    return relative
        .filter(mm -> landmark.isPresent())
        .map(mm -> new MeasuredDistance(mm, landmark, true, markingMm))
        .or(() -> plain.map(mm -> new MeasuredDistance(mm, from, false, markingMm)));
  }

  private void checkDistances() {
    boolean relative =
        section.has("forward-of-landmark-mm") || section.has("rightward-of-landmark-mm");
    if (relative && !section.has("landmark")) {
      section.refuse(section.place(), SheetProblem.DISTANCE_WITHOUT_LANDMARK);
    }
    if (!relative) {
      section.without("landmark", SheetProblem.LANDMARK_WITHOUT_DISTANCE);
    }
    if (!relative && !section.has("forward-mm") && !section.has("rightward-mm")) {
      section.refuse(section.place(), SheetProblem.NO_DISTANCE);
    }
  }

  private void checkName(String name, boolean other) {
    if (KINDS.containsKey(name)) {
      section.without("kind", SheetProblem.KIND_OF_KNOWN_NAME, Argument.text(name));
    } else if (!other && !section.has("kind")) {
      Argument own = Argument.text(name);
      NameSuggester.by(name, KINDS.keySet())
          .ifPresentOrElse(
              m -> refuseName(SheetProblem.NAME_NOT_KNOWN_MEANT, own, Argument.text(m)),
              () ->
                  refuseName(
                      SheetProblem.NAME_NOT_KNOWN,
                      own,
                      Argument.text(String.join(", ", KINDS.keySet()))));
    }
  }

  private void refuseName(SheetProblem topic, Argument... arguments) {
    section.refuse(section.place("name"), topic, arguments);
  }

  private static Map<String, LandmarkKind> kinds() {
    Map<String, LandmarkKind> kinds = new LinkedHashMap<>();
    for (LandmarkKind kind : LandmarkKind.values()) {
      if (kind != LandmarkKind.OTHER) {
        kinds.put(ValueParsers.wordFor(kind), kind);
      }
    }
    kinds.put("lateral patellar border", LandmarkKind.OUTER_PATELLAR_BORDER);
    return kinds;
  }
}
