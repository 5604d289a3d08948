package caryatid.calibration;

import caryatid.calibration.Tables.Plan;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The whole study; keeps its numbers in a file and writes their ranges into a page. */
public final class CalibrationStudy {
  private static final int RATE_HZ = 50;
  private static final int SECONDS = 20;

  private CalibrationStudy() {}

  /**
   * Runs the study, or only writes the page from the numbers that are kept.
   *
   * @param arguments the page, next to which the numbers are kept in a file of that name that ends
   *     in {@code .csv}; which families ({@code chosen-on}, {@code looked-at}, {@code held-back} or
   *     {@code frozen}), or {@code none} to run nothing; and optionally a factor for the number of
   *     runs
   */
  public static void main(String[] arguments) throws IOException {
    Path page = Path.of(arguments[0]);
    Path file = page.resolveSibling(page.getFileName().toString().replace(".md", ".csv"));
    Tables tables = new Tables(arguments.length > 2 ? Double.parseDouble(arguments[2]) : 1);
    switch (arguments[1]) {
      case "none" -> {}
      case "frozen" -> frozen(file, tables);
      case "chosen-on" -> methodBefore(file, "chosen-on", Families.CHOSEN_ON, tables);
      case "looked-at" -> methodBefore(file, "looked-at", Families.LOOKED_AT, tables);
      case "held-back" -> methodBefore(file, "held-back", Families.HELD_BACK, tables);
      default -> throw new IllegalArgumentException("no families are called " + arguments[1]);
    }
    for (Map.Entry<String, Table> summary : Summaries.of(Figures.read(file)).entrySet()) {
      Page.put(page, summary.getKey(), summary.getValue());
    }
  }

  private static void frozen(Path file, Tables tables) throws IOException {
    Figures.put(file, "people", "frozen", tables.people(Families.FROZEN));
    Figures.put(file, "pooled", "frozen", tables.pooled(pooled()));
    Figures.put(file, "pooled beyond", "frozen", tables.pooled(pooledBeyond()));
    Figures.put(file, "changes", "frozen", tables.changes(changes()));
  }

  private static void methodBefore(Path file, String which, List<Family> families, Tables tables)
      throws IOException {
    boolean chosenOn = which.equals("chosen-on");
    Figures.put(file, "people", which, tables.people(families));
    if (chosenOn) {
      Figures.put(file, "known memory", which, tables.knownMemory());
    }
    Figures.put(file, "stands", which, tables.standMeans(families));
    Figures.put(file, "alignments", which, tables.alignments(plans(families, chosenOn)));
    if (!chosenOn) {
      Figures.put(file, "two and five", which, tables.alignments(twoAndFive(families)));
    }
    if (which.equals("held-back")) {
      Figures.put(file, "beyond", which, tables.alignments(beyond(families.get(0))));
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
