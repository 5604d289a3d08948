package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A folder with an export and its description, for tests of the inspect command. */
abstract class Inspecting {
  /** Two seconds of standing are none that could be used, whatever the description says. */
  static final String TOO_SHORT =
      "- expected at least 5.00 s of quiet standing, found 0.00 s; most of the rest was left out"
          + " because: settling after stepping on or before stepping off. Record the stand again, or"
          + " set the part to use by hand with --from and --to.";

  @TempDir Path folder;

  /** Three seconds at 10 Hz; a second of it unloaded. Nothing is stated but the unit of time. */
  @BeforeEach
  void writeAnExport() throws IOException {
    StringBuilder text = new StringBuilder("Time (s),Fz,CoPx,CoPy\n");
    for (int i = 0; i < 30; i++) {
      text.append(i / 10.0).append(i < 10 ? ",0,0,0\n" : ",800,0.01,0.02\n");
    }
    Files.writeString(folder.resolve("stand.csv"), text);
    Files.writeString(
        folder.resolve("plate.yaml"),
        """
        plate-description: 1
        name: Test plate
        axes: {right: +x, anterior: +y, up: +z}
        force-is: on the person
        plates:
          - name: plate 1
            units: {force: N, cop: m}
        """);
  }

  String file(String name) {
    return folder.resolve(name).toString();
  }

  String plain(String text) {
    return text.replace(folder + "/", "").replace('\u00a0', ' ');
  }

  List<String> lines(Run run) {
    return plain(run.out()).lines().toList();
  }

  void refused(Run run, String complaint) {
    assertThat(plain(run.err()).strip()).isEqualTo(complaint);
    assertThat(run.out()).isEmpty();
    assertThat(run.code()).isEqualTo(1);
  }
}
