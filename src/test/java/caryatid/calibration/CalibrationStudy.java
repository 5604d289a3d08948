package caryatid.calibration;

import caryatid.calibration.Tables.Plan;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The whole study; writes its tables into a page. */
public final class CalibrationStudy {
  private static final int RATE_HZ = 50;
  private static final int SECONDS = 20;

  private CalibrationStudy() {}

  /**
   * Runs the study.
   *
   * @param arguments the page, which families ({@code chosen-on}, {@code looked-at}, {@code
   *     held-back} or {@code frozen}), and optionally a factor for the number of runs
   */
  public static void main(String[] arguments) throws IOException {
    Path page = Path.of(arguments[0]);
    String which = arguments[1];
    if (which.equals("frozen")) {
      Tables frozen = new Tables(arguments.length > 2 ? Double.parseDouble(arguments[2]) : 1);
      Page.put(page, "people frozen", frozen.people(Families.FROZEN));
      Page.put(page, "pooled", frozen.pooled(pooled()));
      Page.put(page, "pooled beyond", frozen.pooled(pooledBeyond()));
      Page.put(page, "changes", frozen.changes(changes()));
      return;
    }
    boolean chosenOn = which.equals("chosen-on");
    List<Family> families =
        switch (which) {
          case "chosen-on" -> Families.CHOSEN_ON;
          case "looked-at" -> Families.LOOKED_AT;
          case "held-back" -> Families.HELD_BACK;
          default -> throw new IllegalArgumentException("no families are called " + which);
        };
    Tables tables = new Tables(arguments.length > 2 ? Double.parseDouble(arguments[2]) : 1);
    Page.put(page, "people " + which, tables.people(families));
    if (chosenOn) {
      Page.put(page, "known memory", tables.knownMemory());
    }
    Page.put(page, "stands " + which, tables.standMeans(families));
    Page.put(page, "alignments " + which, tables.alignments(plans(families, chosenOn)));
    if (!chosenOn) {
      Page.put(page, "two and five " + which, tables.alignments(twoAndFive(families)));
    }
    if (which.equals("held-back")) {
      Page.put(page, "beyond", tables.alignments(beyond(families.get(0))));
    }
  }

  /** One to five stands, and with earlier states in the record. */
  private static List<Plan> pooled() {
    List<Plan> plans = new ArrayList<>();
    for (Family family : Families.FROZEN) {
      for (int stands : new int[] {1, 2, 3, 5}) {
        plans.add(new Plan(family, new Clinic(RATE_HZ, SECONDS, stands, 1), 4000));
      }
      plans.add(new Plan(family, new Clinic(RATE_HZ, SECONDS, 3, 2), 4000));
      plans.add(new Plan(family, new Clinic(RATE_HZ, SECONDS, 3, 1).readingAt(), 4000));
      plans.add(new Plan(family, new Clinic(RATE_HZ, SECONDS, 3, 2).readingAt(), 4000));
      Clinic one = new Clinic(RATE_HZ, SECONDS, 1, 1);
      Clinic three = new Clinic(RATE_HZ, SECONDS, 3, 1);
      plans.add(new Plan(family, one.after(3), 4000));
      plans.add(new Plan(family, one.after(3, 3, 3, 3), 2000));
      plans.add(new Plan(family, three.after(3), 4000));
      plans.add(new Plan(family, three.after(1, 3, 2), 2000));
      plans.add(new Plan(family, three.after(3, 3, 3, 3), 2000));
    }
    return plans;
  }

  /** What pooling takes for granted: usual wearers, stands that know nothing of each other. */
  private static List<Plan> pooledBeyond() {
    Clinic one = new Clinic(RATE_HZ, SECONDS, 1, 1);
    Clinic three = new Clinic(RATE_HZ, SECONDS, 3, 1);
    Clinic five = new Clinic(RATE_HZ, SECONDS, 5, 1);
    List<Clinic> clinics =
        List.of(
            one.restless(2),
            three.restless(2),
            five.restless(2),
            three.after(3, 3).restless(2),
            three.inARow(0.5),
            three.after(3, 3).inARow(0.5),
            three.bySession(4),
            three.after(3, 3).bySession(4));
    return clinics.stream().map(c -> new Plan(Families.FROZEN.get(0), c, 4000)).toList();
  }

  /** Three states without a change between them. */
  private static List<Plan> changes() {
    Clinic three = new Clinic(RATE_HZ, SECONDS, 3, 1).after(3, 3);
    return Stream.of(three, three.restless(2), three.inARow(0.5), three.bySession(4))
        .map(clinic -> new Plan(Families.FROZEN.get(0), clinic, 2000))
        .toList();
  }

  private static List<Plan> twoAndFive(List<Family> families) {
    List<Plan> plans = new ArrayList<>();
    for (Family family : families) {
      plans.add(new Plan(family, new Clinic(RATE_HZ, SECONDS, 2, 1), 5000));
      plans.add(new Plan(family, new Clinic(RATE_HZ, SECONDS, 5, 1), 5000));
    }
    return plans;
  }

  /** What is not in the budget: more restless wearers, feet put back elsewhere. */
  private static List<Plan> beyond(Family family) {
    List<Plan> plans = new ArrayList<>();
    for (int stands : new int[] {1, 2, 3}) {
      for (double factor : new double[] {1.5, 2}) {
        Clinic clinic = new Clinic(RATE_HZ, SECONDS, stands, 1).restless(factor);
        plans.add(new Plan(family, clinic, 5000));
      }
    }
    for (int stands : new int[] {3, 5}) {
      Clinic clinic = new Clinic(RATE_HZ, SECONDS, stands, 1).puttingBack(5);
      plans.add(new Plan(family, clinic, 5000));
    }
    return plans;
  }

  private static List<Plan> plans(List<Family> families, boolean chosenOn) {
    List<Plan> plans = new ArrayList<>();
    for (Family family : families) {
      plans.add(new Plan(family, new Clinic(RATE_HZ, SECONDS, 1, 1), 5000));
      plans.add(new Plan(family, new Clinic(RATE_HZ, SECONDS, 3, 1), 10_000));
      plans.add(new Plan(family, new Clinic(RATE_HZ, SECONDS, 3, 2), 5000));
    }
    if (chosenOn) {
      Family family = families.get(0);
      plans.add(new Plan(family, new Clinic(RATE_HZ, SECONDS, 2, 1), 5000));
      plans.add(new Plan(family, new Clinic(RATE_HZ, SECONDS, 5, 1), 5000));
      plans.add(new Plan(family, new Clinic(RATE_HZ, 10, 3, 1), 5000));
      plans.add(new Plan(family, new Clinic(RATE_HZ, 60, 3, 1), 5000));
      plans.add(new Plan(family, new Clinic(100, SECONDS, 3, 1), 5000));
      plans.add(new Plan(family, new Clinic(1000, SECONDS, 3, 1), 5000));
    }
    return plans;
  }
}
