package caryatid.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.alignment.AlignmentState;
import caryatid.geometry.Plane;
import caryatid.loadline.Finding;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Offset;
import caryatid.loadline.Verdict;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.standing.LoadLineOwner;
import caryatid.usecase.Check;
import caryatid.usecase.Inputs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Validation: the program against the truth about the sample recordings. */
class TruthTest {
  private static final Path FOLDER = Path.of("sample-recordings");

  /** A line of {@code truth.csv}. */
  private record Line(String[] cells) {
    String recording() {
      return cells[0];
    }

    String of() {
      return cells[1];
    }

    double number(int column) {
      return Double.parseDouble(cells[column]);
    }

    @Override
    public String toString() {
      return recording() + ", " + of();
    }
  }

  static Stream<Line> feet() throws IOException {
    return Files.readAllLines(FOLDER.resolve("truth.csv")).stream()
        .skip(1)
        .map(line -> new Line(line.split(",")))
        .filter(line -> !line.of().equals("whole body"))
        .filter(line -> plate(line).isPresent());
  }

  /** The plate under a foot; the sound foot of K7 stood on none. */
  private static Optional<String> plate(Line line) {
    boolean left = line.of().equals("left foot");
    if (line.recording().startsWith("m4")) {
      return Optional.of(left ? "plate 1" : "plate 2");
    }
    return left ? Optional.empty() : Optional.of("plate 1");
  }

  /**
   * Tolerance: numbers are written to 0.01 N, 0.1 N mm and 0.001 mm; rounding by half a digit moves
   * a mean over 1,700 samples or more by far less than 0.001 mm and 0.001 N.
   */
  @ParameterizedTest
  @MethodSource("feet")
  void means_are_those_that_were_generated(Line line) throws IOException, BadInput {
    Recording recording = run(line.recording()).recordings().get(0);
    PlateTrack plate = recording.plate(plate(line).orElseThrow()).orElseThrow();
    int from = (int) Math.round(line.number(6) * recording.rateHz());
    int to = (int) Math.round(line.number(7) * recording.rateHz());
    double force = 0;
    double right = 0;
    double anterior = 0;
    for (int i = from; i < to; i++) {
      double up = plate.upN().orElseThrow().at(i);
      force += up;
      right += up * plate.copRightMm().orElseThrow().at(i);
      anterior += up * plate.copAnteriorMm().at(i);
    }
    assertThat(right / force).isCloseTo(line.number(8), within(0.001));
    assertThat(anterior / force).isCloseTo(line.number(9), within(0.001));
    assertThat(force / (to - from)).isCloseTo(line.number(10), within(0.001));
  }

  static List<Marked> marked() {
    return Marked.all();
  }

  /** Each is held with odds of 95 in 100; by these seeds, all are. */
  @ParameterizedTest
  @MethodSource("marked")
  void the_stated_interval_holds_the_true_offset(Marked truth) throws IOException, BadInput {
    Offset offset = finding(truth).offset();
    assertThat(offset.mm().value()).isCloseTo(truth.offsetMm(), within(offset.mm().expanded(0.95)));
  }

  @ParameterizedTest
  @MethodSource("marked")
  void no_result_contradicts_the_truth(Marked truth) throws IOException, BadInput {
    boolean trulyWithin =
        truth.offsetMm() >= truth.lowestMm() && truth.offsetMm() <= truth.highestMm();
    assertThat(finding(truth).verdict())
        .isNotEqualTo(trulyWithin ? Verdict.OUTSIDE : Verdict.WITHIN);
  }

  /** The whole body's line, held against the same tolerance, would lie outside it. */
  @ParameterizedTest
  @MethodSource("barefootOfM4")
  void the_whole_bodys_line_would_give_another_result(Marked truth) throws IOException, BadInput {
    double whole =
        state(truth.sheet()).offsets().stream()
            .map(o -> o.offset())
            .filter(o -> o.of() == LoadLineOwner.WHOLE_BODY && o.kind() == LoadLineMethod.VERTICAL)
            .filter(o -> o.landmark().equals(truth.landmark()))
            .findFirst()
            .orElseThrow()
            .mm()
            .value();
    double own = finding(truth).offset().mm().value();
    assertThat(own).isBetween(truth.lowestMm(), truth.highestMm());
    assertThat(whole).isGreaterThan(truth.highestMm());
  }

  static Stream<Marked> barefootOfM4() {
    return Marked.all().stream()
        .filter(m -> m.sheet().equals("m4/barefoot.yaml") && m.plane() == Plane.SAGITTAL);
  }

  private static Finding finding(Marked truth) throws IOException, BadInput {
    return state(truth.sheet()).findings().stream()
        .filter(f -> f.target().plane() == truth.plane())
        .filter(f -> f.target().landmark().equals(truth.landmark()))
        .findFirst()
        .orElseThrow();
  }

  private static AlignmentState state(String sheet) throws IOException, BadInput {
    String recording = sheet.replace(".yaml", sheet.startsWith("m4") ? ".txt" : ".csv");
    String[] all =
        switch (sheet) {
          case "k7/barefoot.yaml" ->
              new String[] {"k7/barefoot-1.csv", "k7/barefoot-2.csv", "k7/barefoot-3.csv"};
          case "story/stand-2.yaml" ->
              new String[] {"story/stand-2a.csv", "story/stand-2b.csv", "story/stand-2c.csv"};
          default -> new String[] {recording};
        };
    return run(all).result().state();
  }

  private static Check.Checked run(String... recordings) throws IOException, BadInput {
    String first = recordings[0];
    boolean ofStory = first.startsWith("story");
    String sheet = first.replaceAll(ofStory ? "[abc]?\\.csv$" : "(-\\d)?\\.(csv|txt)$", ".yaml");
    String plate =
        first.startsWith("m4")
            ? "m4/plates.yaml"
            : first.equals("k7/shoe.csv") ? "k7/plate-pressure.yaml" : "k7/plate.yaml";
    List<NamedBytes> files = Stream.of(recordings).map(TruthTest::file).toList();
    return Check.run(
        new Inputs(
            files,
            file(sheet),
            Optional.of(file(plate)),
            name -> ofStory ? Optional.of(file("story/" + name)) : Optional.empty()),
        OffsetDateTime.MAX);
  }

  private static NamedBytes file(String name) {
    try {
      return NamedBytes.of(name, Files.readAllBytes(FOLDER.resolve(name)));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
