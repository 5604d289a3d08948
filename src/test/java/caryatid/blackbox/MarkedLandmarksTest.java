package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.alignment.Result;
import caryatid.format.ResultJson;
import caryatid.geometry.Plane;
import caryatid.loadline.Offset;
import caryatid.recording.c3d.LaboratoryStand;
import caryatid.recording.c3d.MadeStand;
import caryatid.remark.BadInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Markers are offered as landmarks; how far a joint lies from its marker is asked. */
class MarkedLandmarksTest {
  private static final String KNEE =
      """
        - name: marker RKNE
          kind: other
          forward-mm: 459.9
          rightward-mm: -420.0
          up-mm: 450.0
          marking-mm: 1.0
        - name: knee centre
          forward-of-landmark-mm: unknown
          rightward-of-landmark-mm: unknown
          landmark: marker RKNE
          up-mm: unknown
          marking-mm: unknown
      """;

  @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    Files.write(folder.resolve("stand.c3d"), LaboratoryStand.c3d());
    Files.writeString(folder.resolve("laboratory.yaml"), LaboratoryStand.DESCRIPTION);
  }

  private String file(String name) {
    return folder.resolve(name).toString();
  }

  private Run check(String landmarks) throws IOException {
    String sheet = LaboratoryStand.SHEET;
    int from = sheet.indexOf("landmarks:");
    int to = sheet.indexOf("targets:");
    String marked = sheet.substring(0, from) + landmarks + sheet.substring(to);
    Files.writeString(folder.resolve("sheet.yaml"), marked);
    return Run.caryatid(
        "check",
        file("stand.c3d"),
        "--trial",
        file("sheet.yaml"),
        "--plate",
        file("laboratory.yaml"),
        "--json");
  }

  @Test
  void eachLegsMarkersAreOfferedWithMeanAndSpread() {
    Run run = Run.caryatid("inspect", file("stand.c3d"));
    assertThat(run.out().replace('\u00a0', ' '))
        .contains(
            "\nLandmarks by markers on the right leg, for the trial sheet: mean and largest standard"
                + " deviation over 20.00 s of quiet standing. No marker is on a joint's axis: measure"
                + " how far the axis lies from the marker and how high, and replace each"
                + " unknown.\nlandmarks:\n  - name: marker RANK\n",
            "\nLandmarks by markers on the left leg,",
            KNEE)
        .doesNotContain("RHEE", "RTOE");
  }

  @Test
  void withoutSuchMarkersNothingIsOffered() throws IOException {
    byte[] without =
        MadeStand.calm()
            .file()
            .without("POINT:LABELS")
            .texts("POINT:LABELS", "RHEE", "RTOE", "a", "b", "LHEE", "LTOE", "c", "d")
            .bytes();
    Files.write(folder.resolve("stand.c3d"), without);
    Run run = Run.caryatid("inspect", file("stand.c3d"));
    assertThat(run.code()).isZero();
    assertThat(run.out()).doesNotContain("Landmarks by markers");
  }

  @Test
  void whatIsOfferedIsRefusedWhileADistanceIsOpen() throws IOException {
    Run run = check("landmarks:\n" + KNEE);
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).contains("'unknown'").doesNotContain("RKNE");
    assertThat(run.err().lines().filter(line -> line.contains("unknown"))).hasSize(4);
  }

  private Offset offset(String spread) throws IOException, BadInput {
    String filled =
        KNEE.replaceFirst("unknown", "-10")
            .replaceFirst("unknown", "5")
            .replaceFirst("unknown", "455")
            .replaceFirst("unknown", "3")
            .replaceFirst("1\\.0", spread);
    Run run = check("landmarks:\n" + filled);
    assertThat(run.code()).as(run.err()).isZero();
    Result result = ResultJson.read(run.out().getBytes(StandardCharsets.UTF_8));
    return result.state().findings().get(0).offset();
  }

  /**
   * Validation: the generator's marker is 460 mm in front of the laboratory's zero but for its own
   * sway, so an axis 10 mm behind it lies at 449.9 mm with the sheet's tenths.
   */
  @Test
  void theJointIsMeasuredFromTheMarker() throws IOException, BadInput {
    Offset offset = offset("1.0");
    assertThat(offset.plane()).isEqualTo(Plane.SAGITTAL);
    double copMm =
        MadeStand.calm().loads.get(0).stream()
            .mapToDouble(MadeStand.Load::x)
            .average()
            .orElseThrow();
    // The mean is weighted by force, which varies by less than 1 %.
    assertThat(offset.mm().value()).isCloseTo(copMm - 449.9, within(0.01));
  }

  /** Variances add (GUM, 5.1.2), the degrees of freedom aside. */
  @Test
  void theMarkersSpreadCountsInTheJointsUncertainty() throws IOException, BadInput {
    double small = offset("1.0").mm().standardUncertainty();
    double large = offset("7.0").mm().standardUncertainty();
    assertThat(large * large - small * small).isCloseTo(48, within(1e-6));
  }
}
