package caryatid.sheet;

import caryatid.geometry.Side;
import caryatid.loadline.Target;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.sheet.yaml.Located;
import caryatid.sheet.yaml.Meant;
import caryatid.sheet.yaml.Section;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The landmarks and targets of a trial sheet, checked against each other.
 *
 * @param landmarks carried over and the sheet's own
 * @param targets carried over and the sheet's own
 */
record Measurements(List<LandmarkEntry> landmarks, List<Target> targets) {

  static Measurements of(
      Section root,
      Optional<ProstheticSide> side,
      Optional<String> wearer,
      Optional<TrialSheet> earlier) {
    List<Optional<Located<LandmarkEntry>>> entries =
        root.has("based-on")
            ? root.sections("landmarks", s -> LandmarkSection.entry(s, side))
            : root.requiredSections("landmarks", s -> LandmarkSection.entry(s, side));
    List<Located<LandmarkEntry>> ownLandmarks = entries.stream().flatMap(Optional::stream).toList();
    List<Located<Target>> ownTargets =
        root.sections("targets", s -> TargetSection.target(s, side)).stream()
            .flatMap(Optional::stream)
            .toList();
    refuseTwins(root, ownLandmarks, ownTargets);
    Carrying carrying = new Carrying(root, earlier);
    carrying.checkSameLeg(wearer, side);
    boolean complete = ownLandmarks.size() == entries.size();
    List<Located<LandmarkEntry>> landmarks = carrying.landmarks(ownLandmarks, complete);
    List<Located<Target>> targets = carrying.targets(ownTargets);
    if (complete && !carrying.failed()) {
      check(root, landmarks, targets);
    }
    return new Measurements(
        landmarks.stream().map(Located::value).toList(),
        targets.stream().map(Located::value).toList());
  }

  private static void refuseTwins(
      Section root, List<Located<LandmarkEntry>> landmarks, List<Located<Target>> targets) {
    Set<List<Object>> seen = new HashSet<>();
    landmarks.stream()
        .filter(l -> !seen.add(List.of(l.value().name(), l.value().side())))
        .forEach(l -> refuse(root, l.place(), Entry.LANDMARK_TWICE, l.value().name()));
    targets.stream()
        .filter(t -> !seen.add(Carrying.key(t.value())))
        .forEach(t -> refuse(root, t.place(), Entry.TARGET_TWICE, t.value().landmark()));
  }

  private static void check(
      Section root, List<Located<LandmarkEntry>> landmarks, List<Located<Target>> targets) {
    if (landmarks.isEmpty()) {
      root.without("landmarks", Entry.NO_LANDMARK);
      return;
    }
    Relations relations = new Relations(landmarks.stream().map(Located::value).toList());
    Map<LandmarkEntry, Place> places = new HashMap<>();
    landmarks.forEach(l -> places.put(l.value(), l.place()));
    relations
        .problems(places::get)
        .forEach(p -> root.refuse(p.place(), p.topic(), p.arguments().toArray(Argument[]::new)));
    targets.forEach(target -> check(root, relations, target));
  }

  private static void check(Section root, Relations relations, Located<Target> located) {
    Target target = located.value();
    Optional<LandmarkEntry> landmark = relations.find(target.landmark(), target.side());
    if (landmark.isEmpty()) {
      refuseUnknown(root, located, relations.names(target.side()));
    } else if (landmark.get().in(target.plane()).isEmpty()) {
      root.refuse(
          located.place(),
          Entry.TARGET_NOT_MEASURED,
          Argument.text(target.landmark()),
          Argument.term(target.plane()));
    }
  }

  private static void refuseUnknown(Section root, Located<Target> target, List<String> names) {
    Side side = target.value().side();
    String name = target.value().landmark();
    Meant.by(name, names)
        .ifPresentOrElse(
            m ->
                root.refuse(
                    target.place(),
                    Entry.TARGET_LANDMARK_UNKNOWN_MEANT,
                    Argument.text(name),
                    Argument.term(side),
                    Argument.text(m)),
            () ->
                root.refuse(
                    target.place(),
                    Entry.TARGET_LANDMARK_UNKNOWN,
                    Argument.text(name),
                    Argument.term(side)));
  }

  private static void refuse(Section root, Place place, Entry topic, String name) {
    root.refuse(place, topic, Argument.text(name));
  }
}
