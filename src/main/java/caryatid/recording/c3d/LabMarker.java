package caryatid.recording.c3d;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A marker on a leg along the laboratory's axes.
 *
 * @param label its name in the file
 * @param name what the name says
 * @param axes along x, y and z, mm, one a frame; 0 where it was not seen
 * @param seen the frames in which it was seen
 * @param median of each axis over those frames
 */
record LabMarker(
    String label, MarkerName name, List<double[]> axes, BitSet seen, LabVector median) {
  /** Markers at the most that are read. */
  private static final int MOST = 64;

  LabMarker {
    axes = List.copyOf(axes);
    seen = (BitSet) seen.clone();
  }

  /** The markers of a file whose names say a place of a leg, and that were seen; none twice. */
  static List<LabMarker> of(C3dFile file, double unitMm) throws C3dFault {
    List<String> labels = file.parameters().longTexts("POINT:LABELS");
    double scale = Math.abs(file.parameters().number("POINT:SCALE").orElse(1));
    double factor = (file.layout().real() ? 1 : scale) * unitMm;
    List<LabMarker> markers = new ArrayList<>();
    Set<String> twice = twice(labels);
    for (int i = 0; i < Math.min(labels.size(), file.layout().points()); i++) {
      Optional<MarkerName> name = MarkerName.of(labels.get(i));
      if (name.isPresent() && !twice.contains(labels.get(i)) && markers.size() < MOST) {
        read(file, i, labels.get(i), name.get(), factor).ifPresent(markers::add);
      }
    }
    return markers;
  }

  private static Set<String> twice(List<String> labels) {
    Set<String> seen = new HashSet<>();
    Set<String> twice = new HashSet<>();
    labels.stream().filter(label -> !seen.add(label)).forEach(twice::add);
    return twice;
  }

  private static Optional<LabMarker> read(
      C3dFile file, int point, String label, MarkerName name, double factor) throws C3dFault {
    int frames = file.layout().frames();
    List<double[]> axes = List.of(new double[frames], new double[frames], new double[frames]);
    BitSet seen = new BitSet(frames);
    for (int frame = 0; frame < frames; frame++) {
      Optional<LabVector> place = place(file, frame, point);
      if (place.isPresent()) {
        seen.set(frame);
        axes.get(0)[frame] = place.get().x() * factor;
        axes.get(1)[frame] = place.get().y() * factor;
        axes.get(2)[frame] = place.get().z() * factor;
      }
    }
    return seen.isEmpty()
        ? Optional.empty()
        : Optional.of(new LabMarker(label, name, axes, seen, median(axes, seen)));
  }

  /** Where a marker was; empty where it was not seen: a residual below 0, or exactly 0, 0, 0. */
  private static Optional<LabVector> place(C3dFile file, int frame, int point) throws C3dFault {
    DataLayout layout = file.layout();
    int at = layout.point(frame, point);
    double[] words = new double[4];
    for (int i = 0; i < 4; i++) {
      int word = at + i * layout.width();
      words[i] = layout.real() ? file.bytes().real(word) : file.bytes().signed16(word);
    }
    LabVector place = new LabVector(words[0], words[1], words[2]);
    boolean lost = !(words[3] >= 0) || !place.finite() || place.length() == 0;
    return lost ? Optional.empty() : Optional.of(place);
  }

  private static LabVector median(List<double[]> axes, BitSet seen) {
    double[] medians =
        axes.stream()
            .mapToDouble(
                axis -> {
                  double[] sorted = seen.stream().mapToDouble(i -> axis[i]).sorted().toArray();
                  return Arrays.stream(sorted)
                      .skip((sorted.length - 1) / 2)
                      .limit(2 - sorted.length % 2)
                      .average()
                      .orElseThrow();
                })
            .toArray();
    return new LabVector(medians[0], medians[1], medians[2]);
  }
}
