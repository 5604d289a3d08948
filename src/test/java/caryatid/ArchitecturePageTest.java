package caryatid;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The table of packages in DEVELOPERS.md says what {@link ArchitectureTest} holds. */
class ArchitecturePageTest {
  private static final String HEAD = "| package | purpose | may use |\n|---|---|---|\n";

  @Test
  void thePageHasEachPackageAndNoOther() throws IOException {
    assertThat(uses().keySet())
        .containsExactlyInAnyOrderElementsOf(
            Arrays.stream(ArchitectureTest.TABLE).map(ArchitectureTest.Row::name).toList());
  }

  @Test
  void whatThePageNamesMayBeUsed() throws IOException {
    Map<String, String> uses = uses();
    for (ArchitectureTest.Row row : ArchitectureTest.TABLE) {
      assertThat(List.of(row.uses().split(" ")))
          .as(row.name())
          .containsAll(named(uses.get(row.name()), uses.keySet()));
    }
  }

  @Test
  void whatMayBeUsedIsNamedOrUsedByWhatIsNamed() throws IOException {
    Map<String, String> uses = uses();
    for (ArchitectureTest.Row row : ArchitectureTest.TABLE) {
      Set<String> reached = new TreeSet<>();
      reach(row.name(), uses, reached);
      assertThat(reached)
          .as(row.name())
          .containsAll(Arrays.stream(row.uses().split(" ")).filter(u -> !u.isEmpty()).toList());
    }
  }

  private static void reach(String name, Map<String, String> uses, Set<String> reached) {
    for (String used : named(uses.get(name), uses.keySet())) {
      if (reached.add(used)) {
        reach(used, uses, reached);
      }
    }
  }

  /** The packages in a cell; "the store's library" is none. */
  private static List<String> named(String cell, Set<String> packages) {
    return packages.stream()
        .filter(
            name ->
                Pattern.compile("(?<![\\w.])" + Pattern.quote(name) + "(?![.\\w]*\\w|'s)")
                    .matcher(cell)
                    .find())
        .toList();
  }

  /** What each package may use, as the page says. */
  private static Map<String, String> uses() throws IOException {
    String page = Files.readString(Path.of("DEVELOPERS.md"));
    int from = page.indexOf(HEAD) + HEAD.length();
    Map<String, String> uses = new LinkedHashMap<>();
    for (String line : page.substring(from, page.indexOf("\n\n", from)).split("\n")) {
      String[] cells = line.split(" *[|] *");
      uses.put(cells[1], cells[3]);
    }
    return uses;
  }
}
