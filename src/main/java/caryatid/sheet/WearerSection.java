package caryatid.sheet;

import caryatid.loadline.LandmarkKind;
import caryatid.remark.Argument;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads the sections of a trial sheet about the prosthesis, the shoe and the notes. */
final class WearerSection {
  private static final ValueParser<Function<ProstheticSide, AnkleAxis>> ANKLE_AXIS =
      ValueParsers.choice(ankleAxes());

  private WearerSection() {}

  private static Map<String, Function<ProstheticSide, AnkleAxis>> ankleAxes() {
    Map<String, Function<ProstheticSide, AnkleAxis>> words = new LinkedHashMap<>();
    words.put("yes", side -> AnkleAxis.of(Set.copyOf(side.sides())));
    words.put("no", side -> AnkleAxis.NONE);
    words.put("left", side -> AnkleAxis.LEFT);
    words.put("right", side -> AnkleAxis.RIGHT);
    return words;
  }

  /** Which prosthetic ankles have an axis; {@code yes} speaks of every prosthesis. */
  static Optional<AnkleAxis> ankleAxis(Section root, Optional<ProstheticSide> side) {
    Optional<AnkleAxis> stated =
        root.optional("ankle-axis", ANKLE_AXIS)
            .flatMap(axis -> side.map(prosthetic -> axis.apply(prosthetic)));
    stated.map(AnkleAxis::legs).orElse(List.of()).stream()
        .filter(leg -> !side.orElseThrow().sides().contains(leg))
        .forEach(
            leg ->
                root.refuse(
                    root.place("ankle-axis"),
                    SheetProblem.ANKLE_WITHOUT_PROSTHESIS,
                    Argument.term(leg)));
    return stated;
  }

  /** Required where the prosthesis has a knee, refused elsewhere. */
  static Optional<KneeSetting> knee(Section root, Optional<AmputationLevel> level) {
    if (level.filter(l -> !l.prostheticKnee()).isPresent()) {
      root.without("knee", SheetProblem.NO_PROSTHETIC_KNEE, Argument.term(level.get()));
      return Optional.empty();
    }
    Optional<Section> section =
        level.isPresent() ? root.requiredSection("knee") : root.optionalSection("knee");
    return section.flatMap(WearerSection::knee);
  }

  private static Optional<KneeSetting> knee(Section section) {
    Optional<Boolean> locked = section.required("locked", ValueParsers.YES_NO);
    Optional<String> mode = section.optional("mode", ValueParsers.TEXT);
    isPolycentric(section);
    return section.build(() -> new KneeSetting(locked.orElseThrow(), mode));
  }

  private static boolean isPolycentric(Section knee) {
    return knee.optional("polycentric", ValueParsers.YES_NO).orElse(false);
  }

  /** For a polycentric knee, the sheet must name the axis that its document refers to. */
  static void axis(Section root, List<LandmarkEntry> landmarks) {
    boolean polycentric =
        root.optionalSection("knee").filter(WearerSection::isPolycentric).isPresent();
    boolean unnamed =
        landmarks.stream()
            .filter(l -> l.kind() == LandmarkKind.KNEE_CENTRE)
            .anyMatch(l -> l.definition().isEmpty());
    if (polycentric && unnamed) {
      root.refuse(root.place("landmarks"), SheetProblem.AXIS_NOT_NAMED);
    }
  }

  static Optional<Footwear> footwear(Section section) {
    Optional<String> worn = section.required("worn", ValueParsers.TEXT);
    Optional<Double> heel = section.required("heel-height-mm", ValueParsers.number(-50, 200));
    return section.build(() -> new Footwear(worn.orElseThrow(), heel.orElseThrow()));
  }

  static List<Component> components(Section root) {
    return root.sections("components", WearerSection::component).stream()
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<Component> component(Section section) {
    Optional<String> what = section.required("what", ValueParsers.TEXT);
    Optional<String> name = section.required("name", ValueParsers.TEXT);
    Optional<String> serial = section.optional("serial", ValueParsers.TEXT);
    return section.build(() -> new Component(what.orElseThrow(), name.orElseThrow(), serial));
  }

  static Optional<Notes> notes(Section section) {
    Optional<String> lastChange = section.optional("last-change", ValueParsers.TEXT);
    Optional<String> conclusion = section.optional("conclusion", ValueParsers.TEXT);
    Optional<String> comfort = section.optional("comfort", ValueParsers.TEXT);
    Optional<String> skin = section.optional("skin", ValueParsers.TEXT);
    Optional<String> reason = section.optional("reason", ValueParsers.TEXT);
    Optional<String> nextStep = section.optional("next-step", ValueParsers.TEXT);
    Optional<String> practitioner = section.optional("practitioner", ValueParsers.TEXT);
    Optional<String> role = section.optional("role", ValueParsers.TEXT);
    return section.build(
        () ->
            new Notes(lastChange, conclusion, comfort, skin, reason, nextStep, practitioner, role));
  }
}
