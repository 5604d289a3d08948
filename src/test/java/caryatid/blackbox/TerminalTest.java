package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing from a file or an argument acts on the terminal. */
class TerminalTest {
  private static final Path K7 = Path.of("sample-recordings/k7");

  @TempDir private Path folder;

  private Run check(String wearer, String... more) throws IOException {
    Path sheet = folder.resolve("sheet.yaml");
    String text = Files.readString(K7.resolve("barefoot.yaml"));
    assertThat(text).contains("wearer: K7");
    Files.writeString(sheet, text.replace("wearer: K7", "wearer: \"" + wearer + "\""));
    String[] first = {
      "check",
      K7.resolve("barefoot-1.csv").toString(),
      "--trial",
      sheet.toString(),
      "--plate",
      K7.resolve("plate.yaml").toString(),
      "--json"
    };
    String[] all =
        java.util.Arrays.copyOf(first, more.length > 0 ? first.length - 1 : first.length);
    return Run.caryatid(all.length == first.length ? all : with(all, more));
  }

  private static String[] with(String[] first, String... more) {
    return java.util.stream.Stream.of(first, more)
        .flatMap(java.util.Arrays::stream)
        .toArray(String[]::new);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\\e]0;x\\a", "\\x9b2J", "\\u202Ex", "\\u2067x", "\\u2028x", "\\rx"})
  void aWearersCodeDoesNot(String acting) throws IOException {
    for (Run run :
        new Run[] {check("K7" + acting), check("K7" + acting, "--out", folder.toString())}) {
      assertThat(run.out() + run.err()).doesNotContainPattern(ACTING);
    }
  }

  @Test
  void aWearersCodeForgesNoLine() throws IOException {
    Run run = check("K7\\nRemark: all is well", "--out", folder.toString());
    assertThat((run.out() + run.err()).lines()).noneMatch(l -> l.startsWith("Remark: all"));
  }

  @Test
  void anArgumentDoesNot() {
    for (String[] arguments :
        new String[][] {
          {"check", "x\u001b]0;y\u0007.csv", "--trial", "z\u202e"},
          {"\u001b[2J"},
          {"record", "show", "--records", folder.resolve("x\u009b").toString(), "K7-right\u001b"}
        }) {
      Run run = Run.caryatid(arguments);
      assertThat(run.code()).isNotZero();
      assertThat(run.out() + run.err()).doesNotContainPattern(ACTING);
    }
  }

  private static final String ACTING =
      "[\\p{Cc}&&[^\\n\\t]]|[\\x{061c}\\x{200e}\\x{200f}\\x{2028}-\\x{202e}\\x{2066}-\\x{2069}]";
}
