package caryatid.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** One start of a launcher and what came of it. */
record Start(int exit, String out, String err) {
  /** Only against a start that hangs: a busy machine builds the class archive in minutes. */
  private static final long LONGEST_S = 600;

  /** A start that goes on, and the files its two streams go to. */
  record Going(Process process, Path out, Path err) {
    Start end() throws IOException, InterruptedException {
      if (!process.waitFor(LONGEST_S, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new IllegalStateException("not done after " + LONGEST_S + " s");
      }
      return new Start(process.exitValue(), Files.readString(out), Files.readString(err));
    }
  }

  static Start of(Checkout checkout, String... arguments) throws IOException, InterruptedException {
    return begin(checkout, checkout.launcher(), Map.of(), arguments).end();
  }

  static Start of(Checkout checkout, Map<String, String> environment)
      throws IOException, InterruptedException {
    return begin(checkout, checkout.launcher(), environment).end();
  }

  static Going begin(
      Checkout checkout, Path launcher, Map<String, String> environment, String... arguments)
      throws IOException {
    List<String> line = new ArrayList<>(List.of(launcher.toString()));
    line.addAll(List.of(arguments));
    Path out = Files.createTempFile(checkout.tools(), "said", ".out");
    Path err = Files.createTempFile(checkout.tools(), "said", ".err");
    ProcessBuilder builder =
        new ProcessBuilder(line)
            .directory(checkout.tools().toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile());
    builder.environment().clear();
    builder.environment().put("PATH", checkout.path());
    builder.environment().putAll(environment);
    return new Going(builder.start(), out, err);
  }
}
