package caryatid;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What can be overlooked: few files in a package, short files, short methods. */
class SizesTest {
  private static final Path SOURCE = Path.of("src/main/java");
  private static final int MOST_FILES = 40;
  private static final int MOST_LINES = 300;
  private static final int MOST_LINES_OF_A_METHOD = 40;

  /** A row of a recording is read in one loop for speed. */
  private static final String ROW_READER = "FastRow.java";

  private static final Pattern METHOD =
      Pattern.compile("(  )+(?!new |return |else |throw )[\\w<@][\\w<>\\[\\], .?@&]* ?\\w+\\(.*");

  @Test
  void noPackageHasTooManyFiles() throws IOException {
    Map<Path, Long> counts =
        files().stream().collect(Collectors.groupingBy(Path::getParent, Collectors.counting()));
    assertThat(counts)
        .isNotEmpty()
        .allSatisfy((p, n) -> assertThat(n).isLessThanOrEqualTo(MOST_FILES));
  }

  @Test
  void noFileIsTooLong() throws IOException {
    assertThat(files())
        .isNotEmpty()
        .allSatisfy(f -> assertThat(Files.readAllLines(f)).hasSizeLessThanOrEqualTo(MOST_LINES));
  }

  @Test
  void noMethodIsTooLongButTheRowReader() throws IOException {
    List<String> tooLong = new ArrayList<>();
    for (Path file : files()) {
      if (!file.endsWith(ROW_READER)) {
        tooLong(Files.readAllLines(file)).forEach(m -> tooLong.add(file.getFileName() + " " + m));
      }
    }
    assertThat(tooLong).isEmpty();
  }

  @Test
  void aLongMethodIsFound() {
    List<String> lines = new ArrayList<>(List.of("class A {", "  void a() {"));
    lines.addAll(List.of("    b();".repeat(MOST_LINES_OF_A_METHOD - 2).split("(?<=;)")));
    lines.add("  }");
    assertThat(tooLong(lines)).isEmpty();
    lines.add(2, "    b();");
    assertThat(tooLong(lines)).containsExactly("void a() {");
  }

  /** By the formatter's indents: a method ends at the first brace under its first letter. */
  private static List<String> tooLong(List<String> lines) {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (METHOD.matcher(line).matches() && !line.endsWith(";")) {
        String end = line.substring(0, line.length() - line.stripLeading().length()) + "}";
        int last = i + lines.subList(i, lines.size()).indexOf(end);
        if (last - i + 1 > MOST_LINES_OF_A_METHOD) {
          found.add(line.strip());
        }
      }
    }
    return found;
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCE)) {
      return files.filter(f -> f.toString().endsWith(".java")).sorted().toList();
    }
  }
}
