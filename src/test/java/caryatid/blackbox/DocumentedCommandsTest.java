package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every command that README and docs show does what they show: the commands of a page are run one
 * after the other in a folder that holds the sample recordings. A command whose line ends in {@code
 * # exit 1} is expected to end so.
 */
class DocumentedCommandsTest {
  private static final Pattern COMMAND =
      Pattern.compile("^(?:\\$ )?\\./caryatid +((?:.*\\\\\\n)*.*)$", Pattern.MULTILINE);
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(\\S+)");
  private static final Pattern EXIT = Pattern.compile("#\\s*exit\\s+(\\d)\\s*$");

  @TempDir private Path folder;

  @TestFactory
  Stream<DynamicTest> everyPageShowsCommandsThatRun() throws IOException {
    return pages()
        .filter(DocumentedCommandsTest::hasCommand)
        .map(page -> DynamicTest.dynamicTest(page.toString(), () -> runAll(page)));
  }

  private static Stream<Path> pages() throws IOException {
    try (Stream<Path> docs = Files.walk(Path.of("docs"))) {
      List<Path> found = docs.filter(p -> p.toString().endsWith(".md")).sorted().toList();
      return Stream.concat(
          Stream.of(Path.of("README.md"), Path.of("sample-recordings/README.md")), found.stream());
    }
  }

  private static boolean hasCommand(Path page) {
    return COMMAND.matcher(read(page)).find();
  }

  private void runAll(Path page) throws IOException, InterruptedException {
    Path home = Files.createTempDirectory(folder, "page");
    copySamples(home);
    Matcher commands = COMMAND.matcher(read(page));
    while (commands.find()) {
      run(home, commands.group(1).replace("\\\n", " "));
    }
  }

  private static void run(Path home, String command) throws IOException, InterruptedException {
    Matcher exit = EXIT.matcher(command);
    int expected = exit.find() ? Integer.parseInt(exit.group(1)) : 0;
    Path said = home.resolve("said.txt");
    Process process =
        new ProcessBuilder(commandLine(EXIT.matcher(command).replaceAll("")))
            .directory(home.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).as(command).isTrue();
    assertThat(process.exitValue()).as(command + "\n" + read(said)).isEqualTo(expected);
  }

  private static List<String> commandLine(String arguments) {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Djava.awt.headless=true"));
    line.addAll(List.of("-cp", absoluteClassPath(), "caryatid.cli.Main"));
    Matcher words = WORD.matcher(arguments);
    while (words.find()) {
      line.add(words.group(0).replaceAll("^[\"']|[\"']$", ""));
    }
    return line;
  }

  private static String absoluteClassPath() {
    return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
        .map(entry -> Path.of(entry).toAbsolutePath().toString())
        .reduce((a, b) -> a + File.pathSeparator + b)
        .orElseThrow();
  }

  private static void copySamples(Path home) throws IOException {
    Path samples = Path.of("sample-recordings");
    try (Stream<Path> files = Files.walk(samples)) {
      for (Path file : files.toList()) {
        Path target = home.resolve(file.toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target);
        }
      }
    }
  }

  private static String read(Path file) {
    try {
      return Files.exists(file) ? Files.readString(file) : "";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
