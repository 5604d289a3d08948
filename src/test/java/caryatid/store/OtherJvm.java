package caryatid.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Starts a main class of the tests in a JVM of its own. */
final class OtherJvm {
  private OtherJvm() {}

  /** Its output goes to a file, which stays whole when it is killed. */
  static Process start(Path said, Class<?> main, String... arguments) throws IOException {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp"));
    line.add(System.getProperty("java.class.path"));
    line.add(main.getName());
    line.addAll(List.of(arguments));
    return new ProcessBuilder(line)
        .redirectOutput(said.toFile())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }
}
