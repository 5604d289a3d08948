package caryatid.sheet;

import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import caryatid.remark.Argument;
import caryatid.sheet.LandmarkEntry.MeasuredDistance;
import caryatid.sheet.MeasuredSection.KnownTo;
import caryatid.sheet.yaml.LocatedValue;
import caryatid.sheet.yaml.NameSuggester;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import caryatid.uncertainty.Contribution;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads one landmark of a trial sheet. */
final class LandmarkSection {
  private static final ValueParser<Double> DISTANCE_MM = ValueParsers.number(-5_000, 5_000);
  private static final ValueParser<Side> SIDE = ValueParsers.word(Side.class);
  private static final Map<String, LandmarkKind> KINDS = kinds();

  private final Section section;
  private final Optional<KnownTo> marking;
  private final Optional<String> landmark;

  private LandmarkSection(Section section, Optional<KnownTo> hand) {
    this.section = section;
    this.marking = marking(section, hand);
    this.landmark = section.optional("landmark", ValueParsers.TEXT);
  }

  /**
   * Reads one.
   *
   * @param hand how well the clinic marks, if it was measured; needed where the landmark does not
   *     say
   */
  static Optional<LocatedValue<LandmarkEntry>> entry(
      Section section, Optional<ProstheticSide> prosthetic, Optional<KnownTo> hand) {
    return new LandmarkSection(section, hand).entry(prosthetic);
  }

  /**
   * The side an entry states or, with one prosthesis, that of the prosthesis.
   *
   * @param prosthetic empty when the sheet's own side could not be read; the sheet is refused then,
   *     and any side lets the rest be looked through
   */
  static Side side(Section section, Optional<ProstheticSide> prosthetic) {
    Optional<Side> stated = section.optional("side", SIDE);
    if (prosthetic.isEmpty()) {
      return stated.orElse(Side.RIGHT);
    }
    if (prosthetic.get() == ProstheticSide.BOTH && !section.has("side")) {
      section.refuse(section.place(), SheetProblem.SIDE_MISSING);
    }
    stated
        .filter(side -> !prosthetic.get().sides().contains(side))
        .ifPresent(
            side ->
                section.refuse(
                    section.place("side"),
                    SheetProblem.SIDE_WITHOUT_PROSTHESIS,
                    Argument.term(side)));
    return stated.orElse(prosthetic.get().sides().get(0));
  }

  private static Optional<KnownTo> marking(Section section, Optional<KnownTo> hand) {
    ValueParser<Double> form = ValueParsers.number(0, 100);
    Optional<Double> stated =
        hand.isPresent()
            ? section.optional("marking-mm", form)
            : section.required("marking-mm", form);
    return stated.map(mm -> new KnownTo(mm, Contribution.STATED_DEGREES)).or(() -> hand);
  }

  private Optional<LocatedValue<LandmarkEntry>> entry(Optional<ProstheticSide> prosthetic) {
    Optional<String> name = section.required("name", ValueParsers.TEXT);
    Optional<String> kind = section.optional("kind", ValueParsers.choice(Map.of("other", "other")));
    name.ifPresent(n -> checkName(n, kind.isPresent()));
    Side side = side(section, prosthetic);
    Optional<MeasuredDistance> forward = measured("forward");
    Optional<MeasuredDistance> rightward = measured("rightward");
    Optional<Double> up = section.required("up-mm", ValueParsers.number(-500, 3_000));
    Optional<String> definition = section.optional("is", ValueParsers.TEXT);
    List<Double> readAtS = section.oneOrSeveral("read-at-s", ValueParsers.number(0, 3_600));
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
                    definition,
                    readAtS),
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
    KnownTo known = marking.orElse(new KnownTo(0, Contribution.STATED_DEGREES));
    return relative
        .filter(mm -> landmark.isPresent())
        .map(mm -> distance(mm, landmark, true, known))
        .or(() -> plain.map(mm -> distance(mm, from, false, known)));
  }

  private static MeasuredDistance distance(
      double mm, Optional<String> from, boolean fromLandmark, KnownTo marking) {
    return new MeasuredDistance(
        mm, from, fromLandmark, marking.value(), marking.degreesOfFreedom());
  }

  private void checkDistances() {
    boolean relative =
        section.has("forward-of-landmark-mm") || section.has("rightward-of-landmark-mm");
    if (relative && !section.has("landmark")) {
      section.refuse(section.place(), SheetProblem.DISTANCE_WITHOUT_LANDMARK);
    }
    if (relative) {
      section.without("read-at-s", SheetProblem.READ_FROM_LANDMARK);
    } else {
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
