package caryatid.calibration;

import static caryatid.calibration.Table.number;

import caryatid.samples.Relaxation;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * The tables of the calibration study.
 *
 * @param scale how many runs, as a multiple of those that are published
 */
record Tables(double scale) {
  /** The percentiles of each measure of {@link People}. */
  static final List<String> PERCENTILES = List.of("5th percentile", "median", "95th percentile");

  private static final long SEED = 20_260_101;

  private int runs(int published) {
    return (int) Math.max(20, Math.round(published * scale));
  }

  /** How simulated people sway. */
  Table people(List<Family> families) {
    Stream<String> measures =
        People.MEASURES.stream()
            .flatMap(m -> PERCENTILES.stream().map(percentile -> m + ", " + percentile));
    Table table =
        new Table(Stream.concat(Stream.of("family", "recorded"), measures).toArray(String[]::new));
    table.row(cells(People.REAL_STANDS, People.REAL));
    for (Family family : families) {
      table.row(cells(family.title(), People.percentiles(family, runs(400), SEED)));
    }
    return table;
  }

  private static String[] cells(String title, double[][] percentiles) {
    Stream<String> numbers =
        Arrays.stream(percentiles).flatMapToDouble(Arrays::stream).mapToObj(x -> number(x, 1));
    return Stream.concat(Stream.of(title, "60 s, 100 Hz"), numbers).toArray(String[]::new);
  }

  /** This stand's mean where the correlation time is known. */
  Table knownMemory() {
    Table table =
        new Table(
            "correlation times in the stretch",
            "stand, s",
            "stands",
            "coverage, %",
            "half-width, mm");
    for (double times : new double[] {40, 20, 12, 6, 3}) {
      for (int seconds : new int[] {20, 60}) {
        double timeS = seconds / times;
        Family family = Family.of("one relaxation", (sdMm, noise) -> new Relaxation(sdMm, timeS));
        StandMeans means = means(family, new Clinic(50, seconds, 1, 1));
        table.row(
            number(times, 0) + " correlation times",
            number(seconds, 0) + " s",
            number(means.runs(), 0),
            number(means.coverage(), 1),
            number(means.halfWidthMm(), 1));
      }
    }
    return table;
  }

  /** This stand's mean of people with long memory. */
  Table standMeans(List<Family> families) {
    Table table =
        new Table("family", "stand, s", "stands", "refused", "coverage, %", "half-width, mm");
    for (Family family : families) {
      for (int seconds : new int[] {10, 20, 60}) {
        StandMeans means = means(family, new Clinic(50, seconds, 1, 1));
        table.row(
            family.title(),
            number(seconds, 0) + " s",
            number(means.runs(), 0),
            number(means.refused(), 0),
            number(means.coverage(), 1),
            number(means.halfWidthMm(), 1));
      }
    }
    return table;
  }

  private StandMeans means(Family family, Clinic clinic) {
    return StandMeans.of(family, clinic, runs(3000), SEED);
  }

  /** This alignment's mean, in both planes. */
  Table alignments(List<Plan> plans) {
    Table table =
        new Table(
            "family",
            "clinic",
            "fittings",
            "refused, %",
            "coverage sagittal, %",
            "coverage frontal, %",
            "half-width sagittal, mm",
            "half-width frontal, mm",
            "met on the edge sagittal, %",
            "met on the edge frontal, %",
            "said met, %",
            "truly outside of those said met, %",
            "said not met, %",
            "truly inside of those said not met, %");
    plans.forEach(plan -> table.row(cells(plan)));
    return table;
  }

  /** The same in short, with how wide the widest intervals are and how often "met" is said. */
  Table pooled(List<Plan> plans) {
    Table table =
        new Table(
            "family",
            "clinic",
            "fittings",
            "coverage sagittal, %",
            "coverage frontal, %",
            "half-width sagittal, mm",
            "half-width sagittal, 95th percentile, mm",
            "half-width frontal, mm",
            "half-width frontal, 95th percentile, mm",
            "met in the middle sagittal, %",
            "met in the middle frontal, %",
            "met on the edge sagittal, %",
            "met on the edge frontal, %");
    plans.forEach(plan -> table.row(shortCells(plan)));
    return table;
  }

  private String[] shortCells(Plan plan) {
    Fittings all = Fittings.of(plan.family(), plan.clinic(), runs(plan.runs()), seed(plan));
    return new String[] {
      plan.family().title(),
      plan.clinic().title(),
      number(all.sagittal().runs(), 0),
      number(all.sagittal().coverage(), 1),
      number(all.frontal().coverage(), 1),
      number(all.sagittal().halfWidthMm(), 1),
      number(all.widestSagittalMm(), 1),
      number(all.frontal().halfWidthMm(), 1),
      number(all.widestFrontalMm(), 1),
      number(all.sagittal().metCentredPercent(), 1),
      number(all.frontal().metCentredPercent(), 1),
      number(all.sagittal().falseWithinPercent(), 1),
      number(all.frontal().falseWithinPercent(), 1)
    };
  }

  /** Changes that are none, without and with a drift from state to state. */
  Table changes(List<Plan> plans) {
    Table table =
        new Table(
            "clinic, three states",
            "drift from state to state",
            "wearers",
            "smallest difference of the method before, mm",
            "A-B half-width, mm",
            "A-B called real, %",
            "A-B-A half-width, mm",
            "A-B-A called real, %");
    for (Plan plan : plans) {
      Changes changes = Changes.of(plan.family(), plan.clinic(), runs(plan.runs()), seed(plan));
      table.row(changes.cells(0));
      table.row(changes.cells(4));
    }
    return table;
  }

  /**
   * One row of {@link #alignments}.
   *
   * @param runs fittings at full scale
   */
  record Plan(Family family, Clinic clinic, int runs) {}

  /** A seed of its own for each row, so that rows share no errors. */
  private static long seed(Plan plan) {
    return SEED + 1_000_000L * (plan.family().title() + plan.clinic().title()).hashCode();
  }

  private String[] cells(Plan plan) {
    Fittings all = Fittings.of(plan.family(), plan.clinic(), runs(plan.runs()), seed(plan));
    Tally both = all.sagittal().plus(all.frontal());
    return new String[] {
      plan.family().title(),
      plan.clinic().title(),
      number(all.sagittal().runs(), 0),
      number(all.refusedPercent(), 1),
      number(all.sagittal().coverage(), 1),
      number(all.frontal().coverage(), 1),
      number(all.sagittal().halfWidthMm(), 1),
      number(all.frontal().halfWidthMm(), 1),
      number(all.sagittal().falseWithinPercent(), 1),
      number(all.frontal().falseWithinPercent(), 1),
      number(both.saidWithinPercent(), 1),
      number(both.outsideThoughWithin(), 1),
      number(both.saidOutsidePercent(), 1),
      number(both.withinThoughOutside(), 1)
    };
  }
}
