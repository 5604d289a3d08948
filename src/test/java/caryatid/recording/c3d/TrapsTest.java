package caryatid.recording.c3d;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.geometry.Side;
import caryatid.recording.c3d.MadeC3d.Made;
import caryatid.recording.importer.Importer;
import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Recording;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.TimeBase;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What C3D files do wrong: asked, refused or remarked, never in silence. */
class TrapsTest {
  private static MadeC3d usual() {
    return new MadeStand(2, Made.INTEL, true).file();
  }

  private static Recording read(MadeC3d file) throws BadInput {
    return Importer.read(NamedBytes.of("stand.c3d", file.bytes()), Optional.empty());
  }

  private static List<Topic> remarks(MadeC3d file) throws BadInput {
    return read(file).remarks().stream().map(Remark::topic).toList();
  }

  private static void assertRefused(MadeC3d file, ImportProblem topic) {
    assertThatThrownBy(() -> read(file))
        .isInstanceOfSatisfying(
            BadInput.class,
            bad -> assertThat(bad.problems()).extracting(Problem::topic).containsExactly(topic));
  }

  /** What is read of a file that changes nothing, as numbers. */
  private static List<Double> numbers(Recording recording) {
    PlateTrack track = recording.plates().get(0);
    return List.of(
        track.copAnteriorMm().at(700),
        track.copRightMm().orElseThrow().at(700),
        track.upN().orElseThrow().at(700));
  }

  @Test
  void aZeroIsRemarkedAndNotApplied() throws BadInput {
    MadeC3d file = usual().without("FORCE_PLATFORM:ZERO").integers("FORCE_PLATFORM:ZERO", 1, 10);
    assertThat(remarks(file)).contains(RecordingRemark.MOTION_ZERO);
    assertThat(numbers(read(file))).isEqualTo(numbers(read(usual())));
    assertThat(remarks(usual())).doesNotContain(RecordingRemark.MOTION_ZERO);
  }

  @Test
  void aZeroMomentPointAboveThePlateIsRemarked() throws BadInput {
    MadeC3d file = new MadeStand(3, Made.INTEL, true).reversedOrigin().file();
    assertThat(remarks(file)).contains(RecordingRemark.MOTION_ORIGIN);
    assertThat(remarks(usual())).doesNotContain(RecordingRemark.MOTION_ORIGIN);
  }

  @Test
  void lengthsInMetresAreRead() throws BadInput {
    MadeC3d file = new MadeStand(2, Made.INTEL, true).metres().file();
    List<Double> metres = numbers(read(file));
    List<Double> millimetres = numbers(read(usual()));
    for (int i = 0; i < 3; i++) {
      // A real number of 24 bits holds 0.001 of a millimetre of a metre.
      assertThat(metres.get(i)).isCloseTo(millimetres.get(i), within(1e-3));
    }
  }

  @Test
  void aUnitOfLengthThatIsMissingOrCutIsConcludedFromThePlates() throws BadInput {
    for (String unit : List.of("", "m")) {
      MadeC3d file = usual().without("POINT:UNITS").texts("POINT:UNITS", unit + " ");
      assertThat(remarks(file)).contains(RecordingRemark.MOTION_LENGTH);
      assertThat(numbers(read(file))).isEqualTo(numbers(read(usual())));
    }
  }

  @Test
  void channelsInVoltsAreRefused() {
    String[] volts = new String[12];
    Arrays.fill(volts, "V");
    MadeC3d file = usual().without("ANALOG:UNITS").texts("ANALOG:UNITS", volts);
    assertThatThrownBy(() -> read(file))
        .isInstanceOfSatisfying(
            BadInput.class,
            bad ->
                assertThat(bad.problems())
                    .extracting(Problem::topic)
                    .containsOnly(ImportProblem.RAW_UNIT));
  }

  @Test
  void missingUnitsAreAskedFor() {
    MadeC3d file = usual().without("ANALOG:UNITS");
    Inspection seen = Importer.inspect(NamedBytes.of("stand.c3d", file.bytes()), Optional.empty());
    assertThat(seen.questions())
        .extracting(Problem::topic)
        .containsExactly(ImportProblem.FORCE_UNIT, ImportProblem.MOMENT_UNIT);
  }

  @Test
  void aHeaderThatContradictsTheParametersIsRemarked() throws BadInput {
    MadeC3d file = usual();
    file.header.put(4, 26);
    assertThat(remarks(file)).contains(RecordingRemark.MOTION_HEADER);
    assertThat(numbers(read(file))).isEqualTo(numbers(read(usual())));
  }

  @Test
  void theHeaderCountsWhereTheFileIsAsLongAsItSays() throws BadInput {
    MadeC3d file = usual().without("POINT:USED").integers("POINT:USED", 7);
    assertThat(remarks(file)).contains(RecordingRemark.MOTION_HEADER);
    assertThat(numbers(read(file))).isEqualTo(numbers(read(usual())));
  }

  @Test
  void aFileThatNeitherFitsIsRefused() {
    MadeC3d file = usual().without("POINT:USED").integers("POINT:USED", 7);
    file.header.put(2, 6);
    assertRefused(file, ImportProblem.MOTION_LAYOUT);
  }

  @Test
  void aParameterThatStandsTwiceIsReadOnceOrRefused() throws BadInput {
    assertThat(numbers(read(usual().reals("ANALOG:GEN_SCALE", 0.5))))
        .isEqualTo(numbers(read(usual())));
    assertRefused(usual().reals("ANALOG:GEN_SCALE", 0.25), ImportProblem.MOTION_TWICE);
  }

  @Test
  void channelsThatAreNotThereAreRefused() {
    double[] channels = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 13};
    assertRefused(
        usual()
            .without("FORCE_PLATFORM:CHANNEL")
            .numbers("FORCE_PLATFORM:CHANNEL", 2, new int[] {6, 2}, channels),
        ImportProblem.MOTION_CHANNEL);
  }

  @Test
  void platesOfOtherTypesAreRefused() {
    for (int type : new int[] {5, 6, 7, 11, 12, 21}) {
      assertRefused(
          usual().without("FORCE_PLATFORM:TYPE").integers("FORCE_PLATFORM:TYPE", 2, type),
          ImportProblem.MOTION_TYPE);
    }
  }

  @Test
  void fewerFramesThanStatedAreRefused() {
    assertRefused(
        usual().without("POINT:FRAMES").integers("POINT:FRAMES", 700), ImportProblem.MOTION_CUT);
  }

  @Test
  void aCountOfFramesBeyondItsTwoBytesStandsElsewhere() throws BadInput {
    MadeC3d file =
        usual()
            .without("POINT:FRAMES")
            .integers("POINT:FRAMES", 65535)
            .integers("TRIAL:ACTUAL_START_FIELD", 1, 0)
            .integers("TRIAL:ACTUAL_END_FIELD", 1, 1);
    // 65537 frames: that many are not in the file, which shows that they were counted.
    assertRefused(file, ImportProblem.MOTION_CUT);
    assertRefused(
        usual()
            .without("POINT:FRAMES")
            .integers("POINT:FRAMES", 65535)
            .reals("POINT:LONG_FRAMES", 70000),
        ImportProblem.MOTION_CUT);
  }

  @Test
  void listsGoOnBeyondTheirFirstPart() throws BadInput {
    MadeStand stand = new MadeStand(2, Made.INTEL, true);
    MadeC3d file = stand.file();
    file.without("ANALOG:UNITS")
        .texts("ANALOG:UNITS", "N", "N", "N", "Nmm", "Nmm", "Nmm", "N")
        .texts("ANALOG:UNITS2", "N", "N", "Nmm", "Nmm", "Nmm");
    assertThat(numbers(read(file))).isEqualTo(numbers(read(usual())));
  }

  @Test
  void markersAtZeroAreMissing() throws BadInput {
    var knee = read(usual()).markers().tracks().get(2);
    assertThat(knee.name()).isEqualTo("RKNE");
    assertThat(knee.seen().count()).isEqualTo(MadeStand.FRAMES - MadeStand.FRAMES / 10);
    assertThat(knee.seen().at(0)).isFalse();
    assertThat(knee.upMm().at(1)).isEqualTo(450);
  }

  @Test
  void markersShowWhichFootIsWhere() throws BadInput {
    assertThat(read(usual()).markers().feet())
        .containsOnly(Map.entry(Side.RIGHT, "plate 1"), Map.entry(Side.LEFT, "plate 2"));
  }

  @Test
  void withoutMarkersTheAxesAreAskedFor() {
    MadeC3d file = usual().without("POINT:LABELS");
    Inspection seen = Importer.inspect(NamedBytes.of("stand.c3d", file.bytes()), Optional.empty());
    assertThat(seen.questions()).extracting(Problem::topic).containsExactly(ImportProblem.AXES);
    assertThat(seen.problems()).isEmpty();
  }

  @Test
  void axesThatMarkersContradictAreRefused() {
    PlateDescription backward =
        new PlateDescription(
            "plate",
            ExportLayout.UNSTATED,
            TimeBase.UNSTATED,
            Optional.of(new Axes(Direction.PLUS_Y, Direction.MINUS_X, Direction.PLUS_Z)),
            Optional.empty(),
            List.of(),
            List.of(),
            Optional.empty(),
            false);
    assertThatThrownBy(
            () -> Importer.read(NamedBytes.of("stand.c3d", usual().bytes()), Optional.of(backward)))
        .isInstanceOfSatisfying(
            BadInput.class,
            bad ->
                assertThat(bad.problems())
                    .extracting(Problem::topic)
                    .containsExactly(ImportProblem.MOTION_FACING));
  }

  /** Corners of one plate under the other foot: its centre of pressure lies beside that foot. */
  @Test
  void aCentreOfPressureBesideTheFootIsRefused() {
    double[] corners = {
      650, 840, 0, 650, 560, 0, 150, 560, 0, 150, 840, 0,
      650, 540, 0, 650, 260, 0, 150, 260, 0, 150, 540, 0
    };
    MadeC3d file = usual().without("FORCE_PLATFORM:CORNERS");
    file.numbers("FORCE_PLATFORM:CORNERS", 4, new int[] {3, 4, 2}, corners);
    file.without("POINT:LABELS")
        .texts("POINT:LABELS", "LHEE", "LTOE", "x", "x", "RHEE", "RTOE", "x", "x");
    assertThatThrownBy(() -> read(file)).isInstanceOf(BadInput.class);
  }
}
