package caryatid.chart;

import java.util.ArrayList;
import java.util.List;

/** Keeps things in a column apart: each as near to where it belongs as its neighbours allow. */
final class VerticalSpread {
  private VerticalSpread() {}

  /**
   * Where each thing's top comes to lie.
   *
   * @param wantedTopsMm where each would like its top, from the uppermost thing to the lowest, mm
   * @param heightsMm how high each is, mm; together not more than the room
   * @param topMm upper end of the room, mm
   * @param bottomMm lower end of the room, mm
   */
  static List<Double> tops(
      List<Double> wantedTopsMm, List<Double> heightsMm, double topMm, double bottomMm) {
    List<Double> tops = new ArrayList<>();
    double free = topMm;
    for (int i = 0; i < wantedTopsMm.size(); i++) {
      double top = Math.max(free, wantedTopsMm.get(i));
      tops.add(top);
      free = top + heightsMm.get(i);
    }
    double taken = bottomMm;
    for (int i = tops.size() - 1; i >= 0; i--) {
      double top = Math.min(tops.get(i), taken - heightsMm.get(i));
      tops.set(i, top);
      taken = top;
    }
    return tops;
  }
}
