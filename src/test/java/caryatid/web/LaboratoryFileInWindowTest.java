package caryatid.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.clinic.KnownPlate;
import caryatid.recording.c3d.LaboratoryStand;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.workbook.MadeWorkbook;
import caryatid.usecase.RememberedPlates;
import java.net.http.HttpRequest;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A C3D file or a workbook that is dropped into the window is counted like any other recording. */
class LaboratoryFileInWindowTest {
  @TempDir Path folder;

  private static Map<String, String> typed() {
    Map<String, String> typed = new TreeMap<>();
    typed.putAll(
        Map.of(
            "known-plate", "laboratory.yaml",
            "stance", "one plate per foot",
            "plate-left", "plate 2",
            "plate-right", "plate 1",
            "body-mass", "85",
            "target[1].source", "Invented instructions for the demo foot, section 4"));
    landmark(typed, 1, "ankle axis", "400", "80");
    landmark(typed, 2, "knee centre", "460", "450");
    landmark(typed, 3, "foot reference point", "", "0");
    return typed;
  }

  private static void landmark(
      Map<String, String> typed, int number, String name, String forward, String up) {
    String row = "landmark[" + number + "].";
    typed.put(row + "name", name);
    typed.put(row + "forward", forward);
    typed.put(row + "forward-from", "zero across");
    typed.put(row + "rightward-sense", "left");
    typed.put(row + "rightward-from", "zero along");
    typed.put(row + "rightward", "420");
    typed.put(row + "up", up);
  }

  @Test
  void aLaboratoryThatIsNotKnownYetIsDescribedByItsOwnFile() throws Exception {
    try (OpenWindow window = new OpenWindow(folder)) {
      String address =
          window
              .ask(
                  window
                      .own("/plates/file?name=stand.c3d")
                      .header("Origin", window.origin())
                      .header("Content-Type", "application/octet-stream")
                      .POST(HttpRequest.BodyPublishers.ofByteArray(LaboratoryStand.c3d())))
              .headers()
              .firstValue("Location")
              .orElseThrow();
      assertThat(window.page(address)).contains("the toes point 0.0");
      window.send(address + "/keep", "plate-name", "Laboratory");
    }
    KnownPlate known = RememberedPlates.all(OpenWindow.setting(folder).records()).get(0);
    assertThat(known.columns()).hasSize(12).contains("Fz 1 (N)", "Mx 2 (Nmm)");
    assertThat(known.description()).contains("axes: {right: -y, anterior: +x, up: +z}");
  }

  @Test
  void aDroppedC3dFileGivesAResult() throws Exception {
    assertCounted("stand.c3d", LaboratoryStand.c3d(), LaboratoryStand.DESCRIPTION);
  }

  @Test
  void aDroppedWorkbookGivesAResult() throws Exception {
    String rows = MadeWorkbook.rows(new String(LaboratoryStand.csv(), UTF_8));
    assertCounted(
        "stand.xlsx",
        new MadeWorkbook().sheet("Stand", rows).bytes(),
        LaboratoryStand.DESCRIPTION_OF_TEXT);
  }

  private void assertCounted(String name, byte[] recording, String description) throws Exception {
    RememberedPlates.remember(
        OpenWindow.setting(folder).records(),
        NamedBytes.of(name, recording),
        LaboratoryStand.named("laboratory.yaml", description),
        false);
    try (OpenWindow window = new OpenWindow(folder)) {
      TypedStand stand = new TypedStand(window, window.start("L5-right", "right"));
      stand.typeAs(typed(), "part", "live");
      stand.upload(name, recording);
      stand.typeAs(typed(), "action", "count-1");
      assertThat(window.page(stand.base() + TypedStand.STEP)).contains(name, "value=\"keep\"");
    }
  }
}
