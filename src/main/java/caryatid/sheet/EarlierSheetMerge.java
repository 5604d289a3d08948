package caryatid.sheet;

import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Target;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.sheet.yaml.LocatedValue;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParsers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a trial sheet takes over from the sheet it is based on. Landmarks move when the wearer steps
 * off, so the user must confirm or re-measure each one.
 */
final class EarlierSheetMerge {
  private final Section root;
  private final Optional<TrialSheet> earlier;
  private final List<LocatedValue<String>> confirmed;
  private final List<LocatedValue<String>> leftOut;
  private final Place place;

  EarlierSheetMerge(Section root, Optional<TrialSheet> earlier) {
    this.root = root;
    this.earlier = earlier;
    this.confirmed = root.list("confirmed", ValueParsers.TEXT.located());
    this.leftOut = root.list("left-out", ValueParsers.TEXT.located());
    this.place = root.place("based-on");
    if (!root.has("based-on")) {
      root.without("confirmed", SheetProblem.CONFIRMED_WITHOUT_EARLIER);
      root.without("left-out", SheetProblem.LEFT_OUT_WITHOUT_EARLIER);
    }
  }

  /** Whether there is a sheet to take over from that could not be read. */
  boolean failed() {
    return root.has("based-on") && earlier.isEmpty();
  }

  void checkSameLeg(Optional<String> wearer, Optional<ProstheticSide> side) {
    if (earlier.isEmpty()) {
      return;
    }
    wearer
        .filter(w -> !w.equals(earlier.get().wearer()))
        .ifPresent(w -> refuse(place, SheetProblem.EARLIER_OTHER_WEARER, earlier.get().wearer()));
    side.filter(s -> s != earlier.get().side())
        .ifPresent(
            s ->
                root.refuse(
                    place, SheetProblem.EARLIER_OTHER_SIDE, Argument.term(earlier.get().side())));
  }

  /**
   * The earlier landmarks that were confirmed, then the sheet's own. One that is left out goes with
   * its targets.
   *
   * @param complete whether all of the sheet's own could be read; if not, one of the unread may be
   *     an earlier one measured again
   */
  List<LocatedValue<LandmarkEntry>> landmarks(
      List<LocatedValue<LandmarkEntry>> own, boolean complete) {
    List<LandmarkEntry> before = earlier.map(TrialSheet::landmarks).orElse(List.of());
    if (complete) {
      check(before, own);
    }
    List<LocatedValue<LandmarkEntry>> carried = new ArrayList<>();
    for (LandmarkEntry landmark : before) {
      if (!anew(landmark, own)) {
        confirmation(landmark)
            .ifPresent(c -> carried.add(new LocatedValue<>(landmark.readBefore(), c.place())));
      }
    }
    carried.addAll(own);
    return carried;
  }

  /**
   * The earlier targets, those of the same plane, side and landmark replaced, then further ones.
   */
  List<LocatedValue<Target>> targets(List<LocatedValue<Target>> own) {
    List<LandmarkInPlane> replaced = own.stream().map(t -> t.value().at()).toList();
    List<LocatedValue<Target>> all = new ArrayList<>();
    earlier.map(TrialSheet::targets).orElse(List.of()).stream()
        .filter(t -> !replaced.contains(t.at()) && !isLeftOut(t.landmark()))
        .forEach(t -> all.add(new LocatedValue<>(t, place)));
    all.addAll(own);
    return all;
  }

  private void check(List<LandmarkEntry> before, List<LocatedValue<LandmarkEntry>> own) {
    before.stream()
        .filter(l -> !anew(l, own) && confirmation(l).isEmpty() && !isLeftOut(l.name()))
        .forEach(l -> refuse(place, SheetProblem.NOT_CONFIRMED, l.name()));
    if (earlier.isPresent()) {
      checkConfirmed(before, own);
      checkLeftOut(before, own);
    }
  }

  private void checkConfirmed(List<LandmarkEntry> before, List<LocatedValue<LandmarkEntry>> own) {
    for (LocatedValue<String> name : confirmed) {
      List<LandmarkEntry> meant = named(name, before);
      if (meant.isEmpty()) {
        refuse(name.place(), SheetProblem.CONFIRMED_UNKNOWN, name.value());
      } else if (meant.stream().allMatch(l -> anew(l, own))) {
        refuse(name.place(), SheetProblem.CONFIRMED_AND_GIVEN, name.value());
      }
    }
  }

  private void checkLeftOut(List<LandmarkEntry> before, List<LocatedValue<LandmarkEntry>> own) {
    for (LocatedValue<String> name : leftOut) {
      List<LandmarkEntry> meant = named(name, before);
      if (meant.isEmpty()) {
        refuse(name.place(), SheetProblem.LEFT_OUT_UNKNOWN, name.value());
      } else if (meant.stream().anyMatch(l -> anew(l, own) || confirmation(l).isPresent())) {
        refuse(name.place(), SheetProblem.LEFT_OUT_AND_GIVEN, name.value());
      }
    }
  }

  private static List<LandmarkEntry> named(LocatedValue<String> name, List<LandmarkEntry> before) {
    return before.stream().filter(l -> l.name().equals(name.value())).toList();
  }

  private boolean isLeftOut(String landmark) {
    return leftOut.stream().anyMatch(name -> name.value().equals(landmark));
  }

  private Optional<LocatedValue<String>> confirmation(LandmarkEntry landmark) {
    return confirmed.stream().filter(c -> c.value().equals(landmark.name())).findFirst();
  }

  private static boolean anew(LandmarkEntry landmark, List<LocatedValue<LandmarkEntry>> own) {
    return own.stream().anyMatch(l -> l.value().is(landmark.name(), landmark.side()));
  }

  private void refuse(Place where, SheetProblem topic, String name) {
    root.refuse(where, topic, Argument.text(name));
  }
}
