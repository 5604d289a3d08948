package caryatid.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A record of an invented fitting, and a small record system to which it is sent. */
abstract class StubSending {
  static final String LOST =
      ": the bundle is kept here; nothing is lost. Give the same command again to go on: nothing is"
          + " stored twice.\n";

  @TempDir Path folder;
  ToldFitting fitting;
  StubSystem system;

  @BeforeEach
  void start() throws IOException {
    fitting = ToldFitting.in(folder);
    Files.writeString(folder.resolve("token"), "s3cret.Token~1==\n");
    system = new StubSystem();
    system.patient(ToldFitting.SYSTEM, ToldFitting.NUMBER);
  }

  @AfterEach
  void stop() {
    system.close();
  }

  /** The command without a token. */
  List<String> command(String address, String patient) {
    List<String> all = new ArrayList<>(List.of("record", "send", ToldFitting.CODE));
    all.addAll(List.of(fitting.file("b.json"), "--records", fitting.records(), "--by", "AB"));
    all.addAll(List.of("--to", address, "--patient-identifier", patient));
    return all;
  }

  Run send(String... more) {
    return send(ToldFitting.PATIENT, more);
  }

  Run send(String patient, String[] more) {
    List<String> all = command(system.address(), patient);
    all.addAll(List.of("--token-file", fitting.file("token")));
    all.addAll(List.of(more));
    Run run = Run.caryatid(all.toArray(String[]::new));
    assertThat(run.out() + run.err()).doesNotContain(ToldFitting.NUMBER).doesNotContain("s3cret");
    return run;
  }
}
