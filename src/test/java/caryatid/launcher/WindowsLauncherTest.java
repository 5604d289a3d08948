package caryatid.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * What of the launcher for Windows can be read from its text; {@code
 * src/test/scripts/windows-launcher} runs it in Wine.
 */
class WindowsLauncherTest {
  private static String text() throws IOException {
    return Files.readString(Path.of("src/dist/caryatid.cmd"), StandardCharsets.ISO_8859_1);
  }

  private static List<String> found(String pattern) throws IOException {
    return Pattern.compile(pattern, Pattern.MULTILINE)
        .matcher(text())
        .results()
        .map((MatchResult found) -> found.group(1))
        .distinct()
        .sorted()
        .toList();
  }

  /** With plain line feeds a label may not be found. */
  @Test
  void everyLineEndsAsOnWindows() throws IOException {
    assertThat(text()).doesNotContainPattern("[^\r]\n").endsWith("\r\n");
  }

  @Test
  void lettersAreAscii() throws IOException {
    assertThat(text()).matches("[\\x20-\\x7e\r\n]*");
  }

  @Test
  void everyJumpHasItsLabelAndNoLabelIsLeftOver() throws IOException {
    assertThat(found("goto (\\w+)")).isNotEmpty().isEqualTo(found("^:(\\w+)"));
  }

  /** A path with a blank stays one word, and the arguments go on as they came. */
  @Test
  void everyPathIsQuoted() throws IOException {
    assertThat(text().lines())
        .filteredOn((String line) -> line.contains("%~dp0"))
        .isNotEmpty()
        .allMatch((String line) -> line.matches("([^\"]*\"[^\"]*\")*[^\"]*\"[^\"]*%~dp0.*"))
        .noneMatch((String line) -> line.matches("[^\"]*(\"[^\"]*\"[^\"]*)*%~dp0.*"));
    assertThat(text()).contains("caryatid.jar\" %*\r");
  }

  /** Each way out says how the program ended. */
  @Test
  void everyWayOutHasAnExitCode() throws IOException {
    assertThat(found("(exit /b.*)\r")).containsExactly("exit /b %CARYATID_ENDED%", "exit /b 1");
  }
}
