package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Validation: {@code record advice} against figures that are computed here, from the formulas of
 * docs/advice.md for one offset and one kind of change.
 */
class AdviceCommandTest {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final double NINETY = NORMAL.inverseCumulativeProbability(0.95);

  /** What each measured offset has for itself, mm. */
  private static final double FINEST = 0.1;

  @TempDir private Path folder;
  private Clinic.Minutes clinic;

  @BeforeEach
  void startRecord() {
    clinic = new Clinic.Minutes(folder.resolve("records"));
    add("before-any-screw", "socket-fit=seated", "contracture-deg=0");
    add("bench-alignment", "items[1].item=socket flexion", "items[1].set=20", "items[1].unit=deg");
    add(
        "length",
        "landmarks[1].landmark=crest",
        "landmarks[1].left-mm=900",
        "landmarks[1].right-mm=900");
  }

  private void add(String kind, String... said) {
    assertThat(clinic.add(kind, said).code()).isZero();
  }

  private void ankle(double deg) {
    add(
        "bench-alignment",
        "items[1].item=ankle plantarflexion",
        "items[1].set=" + deg,
        "items[1].unit=deg",
        "items[1].lowest=-6",
        "items[1].highest=8",
        "items[1].step=0.5",
        "items[1].deg-per-turn=2");
  }

  private void typed(double kneeMm) {
    add(
        "stand",
        "footwear=boot",
        "findings[1].plane=sagittal",
        "findings[1].side=right",
        "findings[1].landmark=knee centre",
        "findings[1].offset-mm=" + kneeMm,
        "findings[1].expanded-mm=4",
        "findings[1].recommended-mm=15",
        "findings[1].below-mm=10",
        "findings[1].above-mm=10",
        "findings[1].source=instructions (invented)");
  }

  /** An offset now and its answer to one degree, with the covariance of the two. */
  private record Known(double mm, double perDeg, double var, double both, double varPerDeg) {
    double mean(double deg) {
      return mm + deg * perDeg;
    }

    double sd(double deg) {
      return Math.sqrt(var + 2 * deg * both + deg * deg * varPerDeg);
    }

    double within(double deg, double lowest, double highest) {
      return phi((highest - mean(deg)) / sd(deg)) - phi((lowest - mean(deg)) / sd(deg));
    }
  }

  private static double phi(double z) {
    return NORMAL.cumulativeProbability(z);
  }

  private void assertAdvice(Known known, double set, double lowest, double highest) {
    Run run = clinic.record("advice", "K7-right");
    assertThat(run.code()).isZero();
    String said = run.out().replace('\u00a0', ' ').replace('\u2212', '-');
    Matcher next =
        find(
            "Next: plantarflex the foot by ([\\d.]+)°, to ([\\d.-]+)°\\. Probability that every"
                + " offset is then within its tolerance: (\\d+) % \\(now (<? ?\\d+) %\\)\\.",
            said);
    double deg = number(next, 1);
    assertThat(number(next, 2)).isCloseTo(set + deg, within(1e-9));
    double then = known.within(deg, lowest, highest);
    assertThat(next.group(3)).isEqualTo("" + Math.round(100 * then));
    long now = Math.round(100 * known.within(0, lowest, highest));
    assertThat(next.group(4)).isEqualTo(now < 1 ? "< 1" : "" + now);
    assertSmallestOfTheBest(known, set, deg, lowest, highest);
    Matcher expected =
        find(
            "knee centre, sagittal: ([\\d.]+) mm (\\w+) expected after the first change \\(90 %:"
                + " ([\\d.]+) mm (\\w+) to ([\\d.]+) mm (\\w+)\\)",
            said);
    double half = NINETY * known.sd(deg);
    assertThat(signed(expected, 1)).isCloseTo(known.mean(deg), within(0.0501));
    assertThat(signed(expected, 3)).isCloseTo(known.mean(deg) - half, within(0.0501));
    assertThat(signed(expected, 5)).isCloseTo(known.mean(deg) + half, within(0.0501));
    Matcher behind = find("line then runs behind the knee: (\\d+|< 1) %", said);
    long percent = Math.round(100 * phi(-known.mean(deg) / known.sd(deg)));
    assertThat(behind.group(1)).isEqualTo(percent < 1 ? "< 1" : "" + percent);
    assertThat(said)
        .contains(
            "With this adapter: "
                + String.format(Locale.ROOT, "%.2f", deg / 2)
                + " turns of the set");
  }

  /** On steps of 0.5 deg up to 8 deg, the smallest within a point of the best. */
  private static void assertSmallestOfTheBest(
      Known known, double set, double chosen, double lowest, double highest) {
    double best = 0;
    for (double deg = 0.5; set + deg <= 8; deg += 0.5) {
      best = Math.max(best, known.within(deg, lowest, highest));
    }
    assertThat(known.within(chosen, lowest, highest)).isGreaterThanOrEqualTo(best - 0.01);
    assertThat(known.within(chosen - 0.5, lowest, highest)).isLessThan(best - 0.01);
  }

  private static Matcher find(String pattern, String in) {
    Matcher matcher = Pattern.compile(pattern).matcher(in);
    assertThat(matcher.find()).as(in).isTrue();
    return matcher;
  }

  private static double number(Matcher matcher, int group) {
    return Double.parseDouble(matcher.group(group));
  }

  private static double signed(Matcher matcher, int group) {
    return matcher.group(group + 1).equals("posterior")
        ? -number(matcher, group)
        : number(matcher, group);
  }

  /**
   * Two typed stands, at 0 and at 3 deg. Of the offset b at 3 deg nothing is known before, of its
   * answer r that it is 0 with 7.2 mm. By hand: the precision of (b, r) is (2, -3; -3, 9) / v + (0,
   * 0; 0, 1) / 7.2 squared, its right side (z1 + z2, -3 z1) / v.
   */
  @Test
  void twoTypedStandsTeachTheAnswerOfTheWearer() {
    ankle(0);
    typed(-20);
    ankle(3);
    typed(-8);
    double u = 4 / NORMAL.inverseCumulativeProbability(0.975);
    double v = u * u + FINEST * FINEST;
    double bb = 2 / v;
    double br = -3 / v;
    double rr = 9 / v + 1 / (7.2 * 7.2);
    double determinant = bb * rr - br * br;
    double rightB = -28 / v;
    double rightR = 60 / v;
    double b = (rr * rightB - br * rightR) / determinant;
    double r = (bb * rightR - br * rightB) / determinant;
    double misfit = sq(-20 - b + 3 * r) / v + sq(-8 - b) / v + sq(r / 7.2);
    assertThat(misfit)
        .as("less than its one degree of freedom, so nothing is widened")
        .isLessThan(1);
    assertAdvice(new Known(b, r, rr / determinant, -br / determinant, bb / determinant), 3, 5, 25);
  }

  private static double sq(double x) {
    return x * x;
  }

  /**
   * One stand on the plate; the knee is marked 410 mm above the ankle, so that a degree about the
   * ankle moves it by 2 sin 0.5 deg times that, to a factor of 1 with 0.6, and a tenth aside.
   */
  @Test
  void aFirstStandIsAnsweredByGeometry() throws IOException {
    ankle(0);
    Known known = stood();
    assertThat(known.perDeg()).isCloseTo(7.156, within(0.001));
    assertAdvice(known, 0, 5, 35);
  }

  private Known stood() throws IOException {
    check(
        "--out",
        folder.resolve("reports").toString(),
        "--by",
        "AB",
        "--record",
        "K7-right",
        "--records",
        folder.resolve("records").toString());
    JsonNode mm = new ObjectMapper().readTree(check("--json")).at("/state/findings/0/offset/mm");
    double variance = FINEST * FINEST;
    for (JsonNode source : mm.get("contributions")) {
      double t =
          TDistribution.of(source.get("degrees-of-freedom").asDouble())
              .inverseCumulativeProbability(0.95);
      variance +=
          sq(
              source.get("standard-uncertainty").asDouble()
                  * source.get("sensitivity").asDouble()
                  * t
                  / NINETY);
    }
    double perDeg = 2 * Math.sin(Math.toRadians(0.5)) * (492 - 82);
    return new Known(
        mm.get("value").asDouble(), perDeg, variance, 0, sq(0.6 * perDeg) + sq(0.1 * perDeg));
  }

  private String check(String... more) throws IOException {
    List<String> all =
        new ArrayList<>(
            List.of(
                "check",
                "sample-recordings/story/stand-1.csv",
                "--trial",
                sheet().toString(),
                "--plate",
                "sample-recordings/k7/plate.yaml"));
    all.addAll(List.of(more));
    Run run = Run.caryatid(all.toArray(String[]::new));
    assertThat(run.code()).as(run.err()).isZero();
    return run.out();
  }

  /** The story's first sheet, with its sagittal target alone. */
  private Path sheet() throws IOException {
    String story = Files.readString(Path.of("sample-recordings/story/stand-1.yaml"));
    return Files.writeString(
        folder.resolve("sheet.yaml"), story.replaceFirst("(?m)^  - \\{plane: frontal.*\\R", ""));
  }
}
