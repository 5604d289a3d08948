package caryatid.repeatability;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Unit;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import caryatid.uncertainty.SampleStatistics;
import caryatid.uncertainty.SampleVariance;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The same landmarks, found, marked and measured several times by one hand, the mark wiped off in
 * between (repeatability; JCGM 200:2012, 2.21).
 *
 * @param at when
 * @param by initials of who marked
 * @param landmarks what was measured of each
 */
public record RepeatedMarks(OffsetDateTime at, String by, List<Repeats> landmarks) {
  private static final String KIND = "hand-repeatability";

  /** One landmark marked five times; fewer say little (common practice, no source). */
  static final int FEWEST_DEGREES = 4;

  /**
   * A ruler is read to a millimetre, which is a standard uncertainty of 1 mm / root 12 (JCGM
   * 100:2008, F.2.2.1); less than that no scatter of readings shows.
   */
  static final double READING_VARIANCE = 1.0 / 12;

  /** Marks that scatter more are a slip of the pen (common practice, no source). */
  private static final double MOST_MM = 50;

  private static final ValueParser<Double> DISTANCE_MM = ValueParsers.number(-5_000, 5_000);

  public RepeatedMarks {
    landmarks = List.copyOf(landmarks);
  }

  /**
   * One landmark's measurements.
   *
   * @param name the landmark and the direction, in the clinic's words
   * @param mm at least two distances, mm
   */
  public record Repeats(String name, List<Double> mm) {
    /**
     * @throws IllegalArgumentException if there are fewer than two
     */
    public Repeats {
      mm = List.copyOf(mm);
      if (mm.size() < 2) {
        throw new IllegalArgumentException(name + " measured " + mm.size() + " times");
      }
    }

    private SampleVariance variance() {
      double[] values = mm.stream().mapToDouble(v -> v).toArray();
      double sd = SampleStatistics.standardDeviation(values);
      return new SampleVariance(sd * sd, values.length - 1.0);
    }
  }

  /**
   * Reads them (YAML).
   *
   * @throws BadInput with every problem found, each with its line and column
   */
  public static RepeatedMarks read(NamedBytes yaml) throws BadInput {
    return Section.read(yaml, KIND, RepeatedMarks::marks);
  }

  private static Optional<RepeatedMarks> marks(Section root) {
    Optional<OffsetDateTime> at = root.required("at", ValueParsers.TIME);
    Optional<String> by = root.required("by", ValueParsers.TEXT);
    List<Optional<Repeats>> read = root.requiredSections("landmarks", RepeatedMarks::repeats);
    List<Repeats> landmarks = new ArrayList<>();
    read.forEach(one -> one.ifPresent(landmarks::add));
    int degrees = landmarks.stream().mapToInt(one -> one.mm().size() - 1).sum();
    if (landmarks.size() == read.size() && degrees < FEWEST_DEGREES) {
      root.refuse(
          root.place("landmarks"),
          RepeatProblem.FEW_MARKS,
          Argument.count(degrees),
          Argument.count(FEWEST_DEGREES));
    }
    Optional<RepeatedMarks> marks =
        root.build(() -> new RepeatedMarks(at.orElseThrow(), by.orElseThrow(), landmarks));
    double mm = marks.map(all -> Math.sqrt(all.variance().variance())).orElse(0.0);
    if (mm > MOST_MM) {
      root.refuse(
          root.place("landmarks"),
          RepeatProblem.TOO_LARGE,
          Argument.of(mm, Unit.MM),
          Argument.of(MOST_MM, Unit.MM));
    }
    return marks;
  }

  private static Optional<Repeats> repeats(Section section) {
    Optional<String> name = section.required("name", ValueParsers.TEXT);
    List<Double> mm = section.list("mm", DISTANCE_MM);
    if (mm.size() < 2) {
      section.refuse(section.place("mm"), RepeatProblem.MARKED_ONCE);
    }
    return section.build(() -> new Repeats(name.orElseThrow(), mm));
  }

  /**
   * The variance of one mark, mm^2, pooled over the landmarks, with the sum of their degrees of
   * freedom (JCGM 100:2008, H.3.6, note; pooled estimates: 4.2.4).
   */
  public SampleVariance variance() {
    SampleVariance pooled =
        SampleVariance.pooled(landmarks.stream().map(Repeats::variance).toList());
    return new SampleVariance(
        Math.max(READING_VARIANCE, pooled.variance()), pooled.degreesOfFreedom());
  }
}
