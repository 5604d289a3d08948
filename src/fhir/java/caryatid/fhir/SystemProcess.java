package caryatid.fhir;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A record system by others in a process of its own, which can be killed and started again. */
final class SystemProcess {
  private static final Pattern PORT = Pattern.compile("^PORT (\\d+)$", Pattern.MULTILINE);
  private static final int LONGEST_START_S = 180;

  private final Path folder;
  private final List<String> command;
  private Process process;
  private int port;

  private SystemProcess(Path folder, List<String> command) {
    this.folder = folder;
    this.command = command;
  }

  /** A router with a repository in memory, fetched with npm. */
  static SystemProcess router() throws IOException, InterruptedException {
    requireProgram("npm");
    Path folder = copied("node", "package.json", "server.cjs");
    run(folder, 300, "npm", "install", "--silent", "--no-audit", "--no-fund");
    return new SystemProcess(folder, List.of("node", "server.cjs"));
  }

  /**
   * A server whose store is a database in a file, fetched with Maven.
   *
   * @param store the file
   */
  static SystemProcess database(Path store) throws IOException, InterruptedException {
    requireProgram("mvn");
    Path folder = copied("database", "RecordDatabase.java");
    Path libraries = folder.resolve("libraries").toAbsolutePath();
    String goal = "org.apache.maven.plugins:maven-dependency-plugin:3.9.0:build-classpath";
    run(
        Path.of("src/fhir/database"),
        600,
        "mvn",
        "-q",
        "-B",
        goal,
        "-Dmdep.outputFile=" + libraries);
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    return new SystemProcess(
        folder,
        List.of(
            java,
            "-Xmx1g",
            "-XX:TieredStopAtLevel=1",
            "-cp",
            Files.readString(libraries),
            "RecordDatabase.java",
            store.toString()));
  }

  private static void requireProgram(String name) {
    boolean there =
        Stream.of(System.getenv("PATH").split(File.pathSeparator))
            .anyMatch(place -> Files.isExecutable(Path.of(place, name)));
    assumeThat(there).as(name + ", which fetches the server").isTrue();
  }

  private static Path copied(String name, String... files) throws IOException {
    Path folder = Files.createDirectories(Path.of("target/fhir").resolve(name));
    for (String file : files) {
      Files.write(
          folder.resolve(file),
          Files.readAllBytes(Path.of("src/fhir").resolve(name).resolve(file)));
    }
    return folder;
  }

  private static void run(Path folder, int longestS, String... command)
      throws IOException, InterruptedException {
    // No stream of the tests themselves: the fetching program would leave theirs not waiting for input.
    Path said = folder.resolve("fetched.txt");
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    assertThat(process.waitFor(longestS, TimeUnit.SECONDS)).as(command[0]).isTrue();
    assertThat(process.exitValue())
        .as("%s: %s", String.join(" ", command), Files.readString(said))
        .isZero();
  }

  /** Starts it, and waits until it listens. */
  void start() {
    Path said = folder.resolve("said.txt");
    try {
      process =
          new ProcessBuilder(command)
              .directory(folder.toFile())
              .redirectErrorStream(true)
              .redirectOutput(said.toFile())
              .start();
      for (int i = 0; i < LONGEST_START_S * 5; i++) {
        Matcher found = PORT.matcher(Files.readString(said));
        if (found.find()) {
          port = Integer.parseInt(found.group(1));
          return;
        }
        assertThat(process.waitFor(200, TimeUnit.MILLISECONDS)).as("ended: " + said).isFalse();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    throw new IllegalStateException("does not listen: " + said);
  }

  int port() {
    return port;
  }

  /** Ends it as a power cut would. */
  void kill() {
    if (process != null) {
      process.destroyForcibly().onExit().join();
    }
  }
}
