package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.PdfText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The timeline of a record's report shows what a bench alignment changed, and counts the rest. */
class ChangedSettingsTest {
  @TempDir private Path folder;
  private Clinic clinic;

  private void bench(String flexion, String rotation, String torque, String why) {
    List<String> all = new ArrayList<>(List.of("bench-alignment", "--by", "AB"));
    all.addAll(row(1, "socket flexion", flexion, "deg"));
    all.addAll(row(2, "foot rotation outward", rotation, "deg"));
    all.addAll(row(3, "fasteners secured to torque", torque, "N m"));
    all.add("items[3].fastener=tube clamp");
    if (!why.isEmpty()) {
      all.add("items[2].why=" + why);
    }
    Run run = clinic.record("add", "K7-right", all.toArray(String[]::new));
    assertThat(run.err()).isEmpty();
  }

  private static List<String> row(int row, String item, String set, String unit) {
    String lead = "items[" + row + "].";
    return List.of(lead + "item=" + item, lead + "set=" + set, lead + "unit=" + unit);
  }

  private String timeline() throws IOException {
    Path report = folder.resolve("record.pdf");
    Run run = clinic.record("report", "K7-right", "--out", report.toString(), "--replace");
    assertThat(run.err()).isEmpty();
    String text = PdfText.running(Files.readAllBytes(report)).replace('\u00a0', ' ');
    return text.substring(text.indexOf("Timeline"));
  }

  @Test
  void whatIsAsBeforeIsCounted() throws IOException {
    clinic = new Clinic(folder);
    clinic.start();
    bench("5", "6", "15", "");
    bench("5", "7", "15", "");
    bench("5", "7.0", "14", "clinical");
    String timeline = timeline();
    assertThat(timeline)
        .containsOnlyOnce("socket flexion; set 5 deg")
        .containsOnlyOnce("foot rotation outward; set 6 deg")
        .contains("foot rotation outward; set 7 deg unchanged settings: 1")
        .contains("fasteners secured again to the same torque: 1")
        .containsPattern("foot rotation outward; set 7(\\.0)? deg; [^;]*clinical")
        .contains("fastener tube clamp; set 14 N m");
  }
}
