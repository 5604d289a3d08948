package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.ImportFact;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.Inspection.PlateView;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Provenance;
import caryatid.recording.model.Recording;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.Sampled;
import caryatid.recording.model.Samples;
import caryatid.recording.model.TimeBase;
import caryatid.recording.model.UnderstoodFact;
import caryatid.recording.model.UsableMask;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which parts of what is understood of an export are told, and where the mean lies. */
class InspectionPartsTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final PlateDescription NOTHING =
      new PlateDescription(
          "plate",
          ExportLayout.UNSTATED,
          TimeBase.UNSTATED,
          Optional.empty(),
          Optional.empty(),
          List.of(),
          List.of(),
          Optional.empty(),
          false);
  private static final Problem EMPTY = Problem.at(Place.of("a.csv"), ImportProblem.EMPTY);

  private static Inspection inspection(
      List<UnderstoodFact> understood,
      List<Problem> questions,
      List<Problem> problems,
      List<Remark> remarks,
      Optional<Sampled> sampled) {
    PlateView plate =
        new PlateView("a", List.of(0.0), Optional.of(ForceUnit.N), List.of(), OptionalDouble.of(7));
    return new Inspection(
        understood,
        questions,
        problems,
        remarks,
        List.of(plate),
        OptionalDouble.empty(),
        NOTHING,
        sampled);
  }

  private static Inspection of(PlateTrack track) {
    Recording recording =
        new Recording(
            new Provenance("a.csv", 9, "a".repeat(128)),
            Samples.of(0, 0.01, 0.02, 0.03),
            100,
            List.of(track),
            List.of());
    return inspection(List.of(), List.of(), List.of(), List.of(), Optional.of(recording));
  }

  private static PlateTrack track(Optional<Samples> right, Samples anterior, BitSet usable) {
    return new PlateTrack(
        "a", right, anterior, Optional.empty(), Optional.empty(), new UsableMask(usable, 4));
  }

  private static BitSet first(int samples) {
    BitSet usable = new BitSet(4);
    usable.set(0, samples);
    return usable;
  }

  private static List<String> plain(List<String> lines) {
    return lines.stream().map(line -> line.replace('\u00a0', ' ')).toList();
  }

  /** Means of 10 and 20, of -4 and -8; what is not usable does not count. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "10 | 20 | -4 | -8 | 6.0 mm behind and 15.0 mm to the right of the zero",
        "-30 | 8 | 5 | 9 | 7.0 mm in front and 11.0 mm to the left of the zero",
        "-5 | 5 | 3 | -3 | 0.0 mm in front and 0.0 mm to the right of the zero"
      })
  void theMeanIsToldWithItsDirections(double r1, double r2, double a1, double a2, String where) {
    PlateTrack track =
        track(Optional.of(Samples.of(r1, r2, 900, 900)), Samples.of(a1, a2, 900, 900), first(2));
    assertThat(plain(InspectionText.lines(of(track), true, ENGLISH)))
        .contains("a: the mean centre of pressure lies " + where);
    assertThat(plain(InspectionText.facts(of(track), ENGLISH)))
        .containsExactly(
            "a: never loaded",
            "mean force while loaded: the weight of 7.0 kg",
            "a: the mean centre of pressure lies " + where);
  }

  @Test
  void aPlateOfOneDirectionTellsThatAlone() {
    PlateTrack track = track(Optional.empty(), Samples.of(-4, -8, 900, 900), first(2));
    assertThat(plain(InspectionText.facts(of(track), ENGLISH)))
        .contains("a: the mean centre of pressure lies 6.0 mm behind of the zero");
    PlateTrack never = track(Optional.empty(), Samples.of(1, 1, 1, 1), first(0));
    assertThat(plain(InspectionText.facts(of(never), ENGLISH))).hasSize(2);
  }

  /** What a conclusion rests on is said; a unit of times is said once, where it is understood. */
  @Test
  void whatIsUnderstoodIsSaidWithItsBasis() {
    Argument name = Argument.text("t");
    Inspection seen =
        inspection(
            List.of(
                new UnderstoodFact(
                    ImportFact.TIMES,
                    List.of(name, Argument.text("ms")),
                    UnderstoodFact.Basis.CONCLUDED),
                new UnderstoodFact(
                    ImportFact.TIMES,
                    List.of(name, Argument.text("ms")),
                    UnderstoodFact.Basis.STATED)),
            List.of(),
            List.of(),
            List.of(
                Remark.of(
                    RecordingRemark.TIME_UNIT, Argument.text("ms"), Argument.of(100, Unit.HZ)),
                Remark.of(RecordingRemark.SAME_TIME, Argument.count(3))),
            Optional.empty());
    List<String> lines = plain(InspectionText.lines(seen, false, ENGLISH));
    assertThat(lines.subList(0, 2))
        .containsExactly(
            "times in column t, in ms (concluded: no other unit gives a force plate's rate)",
            "times in column t, in ms (stated in the file)");
    String same =
        "Remark: Rows with the same time or number as the row above but other values: 3; only the"
            + " first of each counts.";
    assertThat(lines).containsSequence("", "Remarks", "- " + same, "");
    assertThat(plain(InspectionText.remarks(seen, ENGLISH))).containsExactly(same);
    assertThat(plain(InspectionText.facts(seen, ENGLISH))).startsWith(lines.get(0), lines.get(1));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 1, false, What is wrong with the file, The file cannot be used.",
    "1, 0, false, What must be known before the file can be used,"
        + " 'The file cannot be used yet. To write a description that can be completed, add:"
        + " --write plate.yaml'"
  })
  void whatIsWrongOrOpenIsListedBeforeTheEnding(
      int questions, int problems, boolean described, String title, String ending) {
    Inspection seen =
        inspection(
            List.of(),
            List.of(EMPTY).subList(0, questions),
            List.of(EMPTY).subList(0, problems),
            List.of(),
            Optional.empty());
    String said = "expected a force plate's text export, found an empty file. Export again.";
    assertThat(plain(InspectionText.lines(seen, described, ENGLISH)))
        .endsWith("", title, "- " + said, "", ending);
    assertThat(InspectionText.problems(seen, ENGLISH)).hasSize(problems);
    assertThat(InspectionText.question(EMPTY, ENGLISH)).isEqualTo(said);
  }

  @Test
  void aCompleteExportNeedsNoDescription() {
    PlateTrack track = track(Optional.empty(), Samples.of(1, 1, 1, 1), first(4));
    assertThat(plain(InspectionText.lines(of(track), false, ENGLISH)))
        .endsWith("", "The file can be used as it is.");
  }

  /** Asked on a page, a question names what to choose instead of lines of a file. */
  @Test
  void aPageAsksInWordsOfItsOwn() {
    Problem direction =
        Problem.at(Place.of("a.csv"), ImportProblem.ONE_DIRECTION, Argument.text("plate 1"));
    assertThat(InspectionText.question(direction, ENGLISH))
        .startsWith("In which directions does the plate measure (plate 1)?");
  }
}
