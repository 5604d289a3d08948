package caryatid.demo;

import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import java.util.Arrays;

/**
 * A record of typed stands, invented, in which the ankle is turned and the line at the knee answers
 * by 4 mm for a degree.
 */
public final class TurnedAnkle {
  private TurnedAnkle() {}

  /** The ankle set to an angle, deg, with its travel, its step and its set screw. */
  public static Answers ankle(double set) {
    return Invented.answers(
        "items",
        Invented.answers(
            "item",
            "ankle plantarflexion",
            "set",
            set,
            "unit",
            "deg",
            "lowest",
            -6,
            "highest",
            8,
            "step",
            0.5,
            "deg-per-turn",
            2));
  }

  /** The socket set to a flexion, deg. */
  public static Answers socketFlexion(double set) {
    return Invented.answers(
        "items",
        Invented.answers("item", "socket flexion", "set", set, "unit", "deg", "lowest", 0));
  }

  /**
   * A stand with the line at the knee, mm in front of it, where 5 to 25 mm are recommended.
   *
   * @param more names and values of further fields, in turn
   */
  public static Answers stand(double kneeMm, Object... more) {
    Object[] all =
        Arrays.copyOf(new Object[] {"footwear", "shoe", "findings", null}, 4 + more.length);
    all[3] =
        Invented.answers(
            "plane",
            "sagittal",
            "side",
            "right",
            "landmark",
            "knee centre",
            "offset-mm",
            kneeMm,
            "expanded-mm",
            4,
            "recommended-mm",
            15,
            "below-mm",
            10,
            "above-mm",
            10,
            "result",
            result(Math.abs(kneeMm - 15)),
            "source",
            "instructions (invented)");
    System.arraycopy(more, 0, all, 4, more.length);
    return Invented.answers(all);
  }

  /** By hand: the interval of 4 mm is 1.96 u, and one-sided 95 % lie 1.645 u = 3.36 mm away. */
  private static String result(double fromRecommendedMm) {
    if (fromRecommendedMm <= 10) {
      return fromRecommendedMm < 6.64 ? "within" : "inside too close";
    }
    return fromRecommendedMm < 13.36 ? "outside too close" : "outside";
  }

  /** Length and seat are noted. */
  public static Entries begun() {
    return Entries.opened()
        .add(EntryKind.ASSESSMENT, Invented.answers("socket-fit", "seated"))
        .add(
            EntryKind.LEG_LENGTH,
            Invented.answers(
                "landmarks",
                Invented.answers("landmark", "crest", "left-mm", 900, "right-mm", 900)));
  }

  /** Length and seat are noted, and the ankle was turned once, by 3 deg. */
  public static Entries turnedOnce() {
    return begun()
        .add(EntryKind.BENCH_ALIGNMENT, ankle(0))
        .add(EntryKind.STAND, stand(-20))
        .add(EntryKind.BENCH_ALIGNMENT, ankle(3))
        .add(EntryKind.STAND, stand(-8));
  }
}
