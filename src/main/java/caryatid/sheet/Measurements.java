package caryatid.sheet;

import caryatid.geometry.Side;
import caryatid.loadline.Target;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.sheet.MeasuredSection.KnownTo;
import caryatid.sheet.yaml.LocatedValue;
import caryatid.sheet.yaml.NameSuggester;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import caryatid.standing.NamedStretch;
import caryatid.standing.Stretch;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The landmarks and targets of a trial sheet, checked for consistency, and which part of a
 * recording is used.
 *
 * @param landmarks carried over and the sheet's own
 * @param targets carried over and the sheet's own
 * @param stretches set by hand
 * @param turn of the feet on the plate, if the clinic measured it
 */
record Measurements(
    List<LandmarkEntry> landmarks,
    List<Target> targets,
    List<NamedStretch> stretches,
    Optional<KnownTo> turn) {
  private static final ValueParser<Double> SECONDS = ValueParsers.number(0, 1_000_000);

  static Measurements of(
      Section root,
      Optional<ProstheticSide> side,
      Optional<String> wearer,
      Optional<TrialSheet> earlier) {
    MeasuredSection hands = MeasuredSection.in(root);
    Optional<KnownTo> hand = hands.marking();
    List<Optional<LocatedValue<LandmarkEntry>>> entries =
        root.has("based-on")
            ? root.sections("landmarks", s -> LandmarkSection.entry(s, side, hand))
            : root.requiredSections("landmarks", s -> LandmarkSection.entry(s, side, hand));
    List<LocatedValue<LandmarkEntry>> ownLandmarks =
        entries.stream().flatMap(Optional::stream).toList();
    List<LocatedValue<Target>> ownTargets =
        root.sections("targets", s -> TargetSection.target(s, side)).stream()
            .flatMap(Optional::stream)
            .toList();
    refuseTwins(root, ownLandmarks, ownTargets);
    EarlierSheetMerge carrying = new EarlierSheetMerge(root, earlier);
    carrying.checkSameLeg(wearer, side);
    boolean complete = ownLandmarks.size() == entries.size();
    List<LocatedValue<LandmarkEntry>> landmarks = carrying.landmarks(ownLandmarks, complete);
    List<LocatedValue<Target>> targets = carrying.targets(ownTargets);
    if (complete && !carrying.failed()) {
      check(root, landmarks, targets);
    }
    List<LandmarkEntry> marked = landmarks.stream().map(LocatedValue::value).toList();
    WearerSection.axis(root, marked);
    return new Measurements(
        marked, targets.stream().map(LocatedValue::value).toList(), stretches(root), hands.turn());
  }

  /**
   * Each is led by its recording's file name: a place in a list would be another one's as soon as a
   * file is left out.
   */
  private static List<NamedStretch> stretches(Section root) {
    List<LocatedValue<NamedStretch>> set =
        root.sections("stretches", Measurements::stretch).stream()
            .flatMap(Optional::stream)
            .toList();
    Set<String> names = new HashSet<>();
    set.stream()
        .filter(s -> !names.add(s.value().recording()))
        .forEach(s -> refuse(root, s.place(), SheetProblem.STRETCH_TWICE, s.value().recording()));
    return set.stream().map(LocatedValue::value).toList();
  }

  private static Optional<LocatedValue<NamedStretch>> stretch(Section section) {
    Optional<String> recording = section.required("recording", ValueParsers.TEXT);
    double fromS = section.optional("from-s", SECONDS).orElse(Double.NEGATIVE_INFINITY);
    double toS = section.optional("to-s", SECONDS).orElse(Double.POSITIVE_INFINITY);
    if (!section.has("from-s") && !section.has("to-s")) {
      section.refuse(section.place(), SheetProblem.STRETCH_WITHOUT_TIMES);
    }
    if (!(toS > fromS)) {
      section.refuse(section.place("to-s"), SheetProblem.STRETCH_REVERSED);
    }
    return section.build(
        () ->
            new LocatedValue<>(
                new NamedStretch(recording.orElseThrow(), new Stretch(fromS, toS)),
                section.place()));
  }

  private static void refuseTwins(
      Section root,
      List<LocatedValue<LandmarkEntry>> landmarks,
      List<LocatedValue<Target>> targets) {
    Set<Object> seen = new HashSet<>();
    landmarks.stream()
        .filter(l -> !seen.add(List.of(l.value().name(), l.value().side())))
        .forEach(l -> refuse(root, l.place(), SheetProblem.LANDMARK_TWICE, l.value().name()));
    targets.stream()
        .filter(t -> !seen.add(t.value().at()))
        .forEach(t -> refuse(root, t.place(), SheetProblem.TARGET_TWICE, t.value().landmark()));
  }

  private static void check(
      Section root,
      List<LocatedValue<LandmarkEntry>> landmarks,
      List<LocatedValue<Target>> targets) {
    if (landmarks.isEmpty()) {
      root.without("landmarks", SheetProblem.NO_LANDMARK);
      return;
    }
    LandmarkReferences relations =
        new LandmarkReferences(landmarks.stream().map(LocatedValue::value).toList());
    Map<LandmarkEntry, Place> places = new HashMap<>();
    landmarks.forEach(l -> places.put(l.value(), l.place()));
    relations
        .problems(places::get)
        .forEach(p -> root.refuse(p.place(), p.topic(), p.arguments().toArray(Argument[]::new)));
    targets.forEach(target -> check(root, relations, target));
  }

  private static void check(
      Section root, LandmarkReferences relations, LocatedValue<Target> located) {
    Target target = located.value();
    Optional<LandmarkEntry> landmark = relations.find(target.landmark(), target.side());
    if (landmark.isEmpty()) {
      refuseUnknown(root, located, relations.names(target.side()));
    } else if (landmark.get().in(target.plane()).isEmpty()) {
      root.refuse(
          located.place(),
          SheetProblem.TARGET_NOT_MEASURED,
          Argument.text(target.landmark()),
          Argument.term(target.plane()));
    }
  }

  private static void refuseUnknown(Section root, LocatedValue<Target> target, List<String> names) {
    Side side = target.value().side();
    String name = target.value().landmark();
    NameSuggester.by(name, names)
        .ifPresentOrElse(
            m ->
                root.refuse(
                    target.place(),
                    SheetProblem.TARGET_LANDMARK_UNKNOWN_MEANT,
                    Argument.text(name),
                    Argument.term(side),
                    Argument.text(m)),
            () ->
                root.refuse(
                    target.place(),
                    SheetProblem.TARGET_LANDMARK_UNKNOWN,
                    Argument.text(name),
                    Argument.term(side)));
  }

  private static void refuse(Section root, Place place, SheetProblem topic, String name) {
    root.refuse(place, topic, Argument.text(name));
  }
}
