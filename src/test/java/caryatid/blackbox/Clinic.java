package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

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

  /** A record of a right transtibial prosthesis, to which entries are added minute by minute. */
  static final class Minutes {
    private final Clinic clinic;
    private int minute;

    Minutes(Path folder) {
      clinic = new Clinic(folder);
      clinic.record(
          "start",
          "K7-right",
          "--by",
          "AB",
          "--at",
          "2026-03-04T10:00+01:00",
          "wearer=K7",
          "side=right",
          "level=transtibial");
    }

    /** Adds an entry, a minute after the one before. */
    Run add(String kind, String... said) {
      minute++;
      String at = String.format(Locale.ROOT, "2026-03-04T10:%02d+01:00", minute);
      List<String> all = new ArrayList<>(List.of(kind, "--by", "AB", "--at", at));
      all.addAll(List.of(said));
      return clinic.record("add", "K7-right", all.toArray(String[]::new));
    }

    Run record(String command, String first, String... rest) {
      return clinic.record(command, first, rest);
    }
  }
}
