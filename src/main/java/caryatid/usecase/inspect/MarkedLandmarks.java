package caryatid.usecase.inspect;

import caryatid.geometry.Side;
import caryatid.recording.model.BodyPoint;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Sampled;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Unit;
import caryatid.standing.QuietStretch;
import caryatid.standing.Stance;
import caryatid.standing.StandAnalysis;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Markers on knees and ankles as landmarks of a trial sheet. Each is a landmark with its mean and
 * its spread over the quiet stretch; the joint is measured from it, and how far is left open, so
 * that the sheet is refused until somebody has measured it.
 */
final class MarkedLandmarks {
  private static final Set<BodyPoint> JOINTS = EnumSet.of(BodyPoint.ANKLE, BodyPoint.KNEE);

  private final Sampled recording;
  private final QuietStretch stretch;
  private final List<String> lines = new ArrayList<>();

  private MarkedLandmarks(Sampled recording, QuietStretch stretch) {
    this.recording = recording;
    this.stretch = stretch;
  }

  /** The lines; none where there is no such marker, or no quiet stand. */
  static List<String> lines(Sampled recording, Wording wording) {
    if (recording.markers().tracks().stream().noneMatch(m -> JOINTS.contains(m.point()))) {
      return List.of();
    }
    Optional<QuietStretch> stretch =
        stances(recording).stream().flatMap(s -> sought(recording, s).stream()).findFirst();
    return stretch.map(s -> new MarkedLandmarks(recording, s).all(wording)).orElse(List.of());
  }

  /** As the markers show the feet; else each plate. */
  private static List<Stance> stances(Sampled recording) {
    Optional<String> left = Optional.ofNullable(recording.markers().feet().get(Side.LEFT));
    Optional<String> right = Optional.ofNullable(recording.markers().feet().get(Side.RIGHT));
    if (left.isPresent() && right.isPresent() && !left.equals(right)) {
      return List.of(new Stance.PlatePerFoot(left.get(), right.get()));
    }
    List<Stance> stances = new ArrayList<>();
    for (PlateTrack plate : recording.plates()) {
      stances.add(new Stance.BothFeetOnOnePlate(Optional.of(plate.plate())));
      stances.add(new Stance.ProstheticFootOnPlate(Optional.of(plate.plate())));
    }
    return stances;
  }

  private static Optional<QuietStretch> sought(Sampled recording, Stance stance) {
    try {
      return Optional.of(StandAnalysis.seek(recording, stance));
    } catch (BadInput e) {
      return Optional.empty();
    }
  }

  private List<String> all(Wording wording) {
    for (Side side : Side.values()) {
      List<MarkerPlace> ankle = places(side, BodyPoint.ANKLE);
      List<MarkerPlace> knee = places(side, BodyPoint.KNEE);
      if (!ankle.isEmpty() || !knee.isEmpty()) {
        lines.add("");
        lines.add(
            wording.fill(
                "MarkedLandmarks.title",
                Argument.term(side),
                Argument.of(stretch.durationS(), Unit.S)));
        lines.add("landmarks:");
        leg("ankle axis", ankle);
        leg("knee centre", knee);
      }
    }
    return List.copyOf(lines);
  }

  private List<MarkerPlace> places(Side side, BodyPoint point) {
    return recording.markers().tracks().stream()
        .filter(m -> m.side() == side && m.point() == point)
        .flatMap(m -> MarkerPlace.of(m, stretch.fromS(), stretch.toS()).stream())
        .toList();
  }

  private void leg(String joint, List<MarkerPlace> places) {
    places.forEach(this::marker);
    places.stream().findFirst().ifPresent(first -> joint(joint, first));
  }

  private void marker(MarkerPlace place) {
    lines.add("  - name: " + place.name());
    lines.add("    kind: other");
    lines.add("    forward-mm: " + tenths(place.anteriorMm()));
    lines.add("    rightward-mm: " + tenths(place.rightMm()));
    lines.add("    up-mm: " + tenths(place.upMm()));
    lines.add("    marking-mm: " + tenths(Math.max(0.1, place.spreadMm())));
  }

  private void joint(String name, MarkerPlace from) {
    lines.add("  - name: " + name);
    lines.add("    forward-of-landmark-mm: unknown");
    lines.add("    rightward-of-landmark-mm: unknown");
    lines.add("    landmark: " + from.name());
    lines.add("    up-mm: unknown");
    lines.add("    marking-mm: unknown");
  }

  private static String tenths(double mm) {
    return String.format(Locale.ROOT, "%.1f", mm);
  }
}
