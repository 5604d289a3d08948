package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.c3d.LaboratoryStand;
import caryatid.recording.c3d.MadeC3d;
import caryatid.recording.c3d.MadeStand;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What markers prove of feet and facing, and what else a laboratory's file gets wrong: asked,
 * refused or remarked, never in silence.
 */
class MarkedFeetTest {
  private static final String STANCE =
      "stance: {kind: one plate per foot, left: plate 2, right: plate 1}";
  private static final String LABELS = "POINT:LABELS";

  @TempDir Path folder;

  private Run check(MadeC3d file, String sheet, String description) throws IOException {
    return check(file, sheet, description, "--json");
  }

  private Run check(MadeC3d file, String sheet, String description, String... more)
      throws IOException {
    Files.write(folder.resolve("stand.c3d"), file.bytes());
    Files.writeString(folder.resolve("sheet.yaml"), sheet);
    Files.writeString(folder.resolve("laboratory.yaml"), description);
    String[] usual = {
      "check", file("stand.c3d"), "--trial", file("sheet.yaml"), "--plate", file("laboratory.yaml")
    };
    return Run.caryatid(Stream.of(usual, more).flatMap(Arrays::stream).toArray(String[]::new));
  }

  private String file(String name) {
    return folder.resolve(name).toString();
  }

  private void refused(Run run, String... complaints) {
    assertThat(run.err().replace(folder + "/", "").replace('\u00a0', ' ').strip().lines())
        .containsExactly(complaints);
    assertThat(run.out()).isEmpty();
    assertThat(run.code()).isEqualTo(1);
  }

  private static MadeC3d usual() {
    return MadeStand.calm().file();
  }

  private static MadeC3d labelled(String... labels) {
    return usual().without(LABELS).texts(LABELS, labels);
  }

  private static String stance(String other) {
    return LaboratoryStand.SHEET.replace(STANCE, "stance: {" + other + "}");
  }

  /** The sheet of the left leg, whose marks are 300 mm further left. */
  private static String leftSheet(String sheet) {
    return sheet.replace("side: right", "side: left").replace("-420", "-720");
  }

  @Test
  void feetThatStandWhereTheStanceSaysArePassedOnEitherSide() throws IOException {
    for (String sheet : new String[] {LaboratoryStand.SHEET, leftSheet(LaboratoryStand.SHEET)}) {
      Run run = check(usual(), sheet, LaboratoryStand.DESCRIPTION);
      assertThat(run.code()).as(run.err()).isZero();
    }
  }

  @Test
  void exchangedPlatesAreRefusedForBothFeet() throws IOException {
    refused(
        check(
            usual(),
            stance("kind: one plate per foot, left: plate 1, right: plate 2"),
            LaboratoryStand.DESCRIPTION),
        "stand.c3d: by its markers the left foot was on plate 2; the stance says otherwise. Check"
            + " which plate the stance gives to which foot.",
        "stand.c3d: by its markers the right foot was on plate 1; the stance says otherwise. Check"
            + " which plate the stance gives to which foot.");
  }

  @Test
  void theProstheticFootOnTheOtherFootsPlateIsRefusedOnEitherSide() throws IOException {
    String other = "\nother-foot: {on: plate, height-difference-mm: 0}";
    String right = stance("kind: prosthetic foot on plate, plate: plate 2") + other;
    refused(
        check(usual(), right, LaboratoryStand.DESCRIPTION),
        "stand.c3d: by its markers the left foot was on plate 2; the stance says otherwise. Check"
            + " which plate the stance gives to which foot.",
        "stand.c3d: by its markers the right foot was on plate 1; the stance says otherwise. Check"
            + " which plate the stance gives to which foot.");
    String left = leftSheet(stance("kind: prosthetic foot on plate, plate: plate 2") + other);
    assertThat(check(usual(), left, LaboratoryStand.DESCRIPTION).err()).doesNotContain("markers");
  }

  @Test
  void bothFeetOnOnePlateAreRefusedIfOneIsElsewhere() throws IOException {
    refused(
        check(
            usual(),
            stance("kind: both feet on one plate, plate: plate 1"),
            LaboratoryStand.DESCRIPTION),
        "stand.c3d: by its markers the left foot was on plate 2; the stance says otherwise. Check"
            + " which plate the stance gives to which foot.");
  }

  @Test
  void oneFootsMarkersProveThatFootAlone() throws IOException {
    MadeC3d right = labelled("RHEE", "RTOE", "RKNE", "RANK", "a", "b", "c", "d");
    Run run = check(right, LaboratoryStand.SHEET, LaboratoryStand.DESCRIPTION);
    assertThat(run.code()).as(run.err()).isZero();
    refused(
        check(
            right,
            stance("kind: one plate per foot, left: plate 1, right: plate 2"),
            LaboratoryStand.DESCRIPTION),
        "stand.c3d: by its markers the right foot was on plate 1; the stance says otherwise. Check"
            + " which plate the stance gives to which foot.");
  }

  /** The centres of pressure still tell which foot is on the left. */
  @Test
  void withoutMarkersExchangedPlatesAreRefusedByTheirPlaces() throws IOException {
    MadeC3d none = labelled("a", "b", "c", "d", "e", "f", "g", "h");
    Run run =
        check(
            none,
            stance("kind: one plate per foot, left: plate 1, right: plate 2"),
            LaboratoryStand.DESCRIPTION);
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).contains("the left foot's centre of pressure lies");
  }

  /** A heel on one plate and its toes on another put the foot on neither. */
  @Test
  void markersThatContradictEachOtherProveNothing() throws IOException {
    MadeC3d torn = labelled("RHEE", "a", "RKNE", "RANK", "LHEE", "RTOE", "LKNE", "LANK");
    Files.write(folder.resolve("torn.c3d"), torn.bytes());
    Run run = Run.caryatid("inspect", file("torn.c3d"));
    assertThat(run.out())
        .doesNotContain("foot was on", "the toes point")
        .contains("which of the export's axes point to the person's right, forward and up");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        // Sides exchanged; heels and toes exchanged.
        "LHEE LTOE LKNE LANK RHEE RTOE RKNE RANK",
        "RTOE RHEE RKNE RANK LTOE LHEE LKNE LANK"
      })
  void markersThatContradictTheDescribedFacingAreRefused(String labels) throws IOException {
    refused(
        check(labelled(labels.split(" ")), LaboratoryStand.SHEET, LaboratoryStand.DESCRIPTION),
        "stand.c3d: the markers contradict the described axes: toes must lie in front of heels, the"
            + " right leg to the right, the legs above the plates. Correct 'axes:', or delete it.");
  }

  @Test
  void aFacingThatIsDescribedReversedIsRefused() throws IOException {
    String reversed =
        LaboratoryStand.DESCRIPTION.replace(
            "{right: -y, anterior: +x, up: +z}", "{right: +y, anterior: -x, up: +z}");
    refused(
        check(usual(), LaboratoryStand.SHEET, reversed),
        "stand.c3d: the markers contradict the described axes: toes must lie in front of heels, the"
            + " right leg to the right, the legs above the plates. Correct 'axes:', or delete it.");
  }

  @Test
  void whoeverFacesTheOtherWayIsReadThatWay() throws IOException {
    MadeC3d turned = labelled("LTOE", "LHEE", "LKNE", "LANK", "RTOE", "RHEE", "RKNE", "RANK");
    Files.write(folder.resolve("turned.c3d"), turned.bytes());
    assertThat(Run.caryatid("inspect", file("turned.c3d")).out())
        .contains("axes: {right: +y, anterior: -x, up: +z} (concluded)")
        .contains("the left foot was on plate 1", "the right foot was on plate 2");
  }

  @Test
  void withoutMarkersTheFacingIsAskedFor() throws IOException {
    MadeC3d none = labelled("a", "b", "c", "d", "e", "f", "g", "h");
    String axes = "axes: {right: -y, anterior: +x, up: +z}\n";
    Run run = check(none, LaboratoryStand.SHEET, LaboratoryStand.DESCRIPTION.replace(axes, ""));
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("which of the export's axes point to the person's right, forward and up");
  }

  private Run printed(MadeC3d file) throws IOException {
    String[] out = {"--out", file("out"), "--replace"};
    return check(file, LaboratoryStand.SHEET, LaboratoryStand.DESCRIPTION, out);
  }

  @Test
  void aStretchThatIsCalledUnloadedIsRemarkedAndNotSubtracted() throws IOException {
    MadeC3d zero = usual().without("FORCE_PLATFORM:ZERO").integers("FORCE_PLATFORM:ZERO", 1, 10);
    Run with = printed(zero);
    Run without = printed(usual());
    assertThat(with.code()).as(with.err()).isZero();
    String remark =
        "The C3D file calls frames 1 to 10 unloaded (FORCE_PLATFORM:ZERO). That was not applied,"
            + " since somebody may stand there.";
    assertThat(with.out()).contains(remark);
    assertThat(without.out()).doesNotContain("FORCE_PLATFORM:ZERO");
    assertThat(with.out().lines().filter(line -> !line.endsWith(remark)))
        .containsExactlyElementsOf(without.out().lines().toList());
  }
}
