package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The story in the docs, from the bench to walking, tells what its page says it tells. */
class StoryTest {
  private static final Path PAGE = Path.of("sample-recordings/story/README.md");
  private static final Path SHOWN = Path.of("src/test/resources/caryatid/blackbox/story.txt");
  private static final String REPORT = "K7-right-record.pdf";
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  @TempDir private Path folder;

  /**
   * Regression; {@code -Dapprove=true} writes the text anew. The head digest hangs on reports'
   * bytes.
   */
  @Test
  void theWholeStoryIsShown() throws IOException {
    String shown = "";
    for (String command : commands()) {
      Run run = Run.caryatid(words(command));
      assertThat(run.err()).as(command).isEmpty();
      assertThat(run.code()).as(command).isZero();
      if (command.startsWith("record show K7-right --records records")) {
        shown =
            run.out()
                .replaceAll("Head digest [0-9a-f]{128}", "Head digest ...")
                .replace('\u00a0', ' ');
      }
    }
    if (Boolean.getBoolean("approve")) {
      Files.writeString(SHOWN, shown);
    }
    compareReport();
    assertThat(shown).isEqualTo(Files.readString(SHOWN));
    for (String line :
        Files.readString(PAGE).lines().filter(l -> l.startsWith("    entry")).toList()) {
      assertThat(shown).contains(line);
    }
  }

  /** The story's report, like the sample reports; {@code -Dreports.write} writes it anew. */
  private void compareReport() throws IOException {
    byte[] made = Files.readAllBytes(folder.resolve(REPORT));
    Path kept = Path.of("reports").resolve(REPORT);
    if (System.getProperty("reports.write") != null) {
      Files.write(kept, made);
    }
    assertThat(Files.readAllBytes(kept)).as(kept.toString()).isEqualTo(made);
  }

  private static List<String> commands() throws IOException {
    return Files.readString(PAGE)
        .lines()
        .filter(line -> line.startsWith("./caryatid "))
        .map(line -> line.substring("./caryatid ".length()))
        .toList();
  }

  /** The command's words; what it writes goes to the test's folder. */
  private String[] words(String command) {
    List<String> words = new ArrayList<>();
    Matcher found = WORD.matcher(command);
    while (found.find()) {
      String word = found.group(1) == null ? found.group(2) : found.group(1);
      boolean writes =
          word.matches(
              "records|restored|backup-.*|colleague|reports-story.*|next/.*|.*\\.zip|.*\\.pdf");
      words.add(writes ? folder.resolve(word).toString() : word);
    }
    return words.toArray(String[]::new);
  }
}
