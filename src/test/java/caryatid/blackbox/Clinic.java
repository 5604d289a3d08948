package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A clinic's records in a folder, used by commands.
 *
 * @param folder where they lie
 */
record Clinic(Path folder) {

  /** Starts the record K7-right. */
  void start() {
    Run run =
        record("start", "K7-right", "--by", "AB", "wearer=K7", "side=right", "level=transtibial");
    assertThat(run).isEqualTo(new Run(0, "Started record K7-right in " + folder + "\n", ""));
  }

  Run record(String command, String first, String... rest) {
    List<String> all =
        new ArrayList<>(List.of("record", command, "--records", folder.toString(), first));
    all.addAll(List.of(rest));
    return Run.caryatid(all.toArray(String[]::new));
  }

  Run record(String command) {
    return Run.caryatid("record", command, "--records", folder.toString());
  }
}
