package caryatid.sheet;

import caryatid.geometry.Side;
import caryatid.loadline.Target;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.sheet.MeasuredSection.KnownTo;
import caryatid.sheet.yaml.LocatedValue;
import caryatid.sheet.yaml.NameSuggester;
import caryatid.sheet.yaml.Section;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The landmarks and targets of a trial sheet, checked for consistency.
 *
 * @param landmarks carried over and the sheet's own
 * @param targets carried over and the sheet's own
 * @param turn of the feet on the plate, if the clinic measured it
 */
record Measurements(List<LandmarkEntry> landmarks, List<Target> targets, Optional<KnownTo> turn) {

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
    return new Measurements(
        landmarks.stream().map(LocatedValue::value).toList(),
        targets.stream().map(LocatedValue::value).toList(),
        hands.turn());
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
