package caryatid.report;

import caryatid.geometry.Plane;
import caryatid.loadline.LandmarkKind;
import caryatid.uncertainty.ModifiedZScores;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which offsets are unusual among those of the same landmark and plane: their modified z-score is
 * beyond its limit (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17).
 */
final class UnusualOffsets {
  private UnusualOffsets() {}

  /** What is compared with each other; a landmark of the clinic's own goes by its name. */
  private record Group(LandmarkKind kind, String name, Plane plane) {
    static Group of(FindingRow row) {
      boolean own = row.landmark() == LandmarkKind.OTHER;
      return new Group(row.landmark(), own ? row.landmarkName() : "", row.plane());
    }
  }

  /** The findings in their order, each compared with the others. */
  static List<FindingRow> marked(List<FindingRow> findings) {
    Map<Group, List<Integer>> groups = new LinkedHashMap<>();
    for (int i = 0; i < findings.size(); i++) {
      groups.computeIfAbsent(Group.of(findings.get(i)), group -> new ArrayList<>()).add(i);
    }
    List<FindingRow> marked = new ArrayList<>(findings);
    groups.values().stream()
        .filter(places -> places.size() >= ModifiedZScores.FEWEST)
        .forEach(places -> mark(places, marked));
    return marked;
  }

  private static void mark(List<Integer> places, List<FindingRow> rows) {
    double[] scores =
        ModifiedZScores.of(
            places.stream().mapToDouble(place -> rows.get(place).offset().value()).toArray());
    for (int i = 0; i < scores.length; i++) {
      boolean unusual = Math.abs(scores[i]) > ModifiedZScores.LIMIT;
      rows.set(places.get(i), rows.get(places.get(i)).compared(Optional.of(unusual)));
    }
  }
}
