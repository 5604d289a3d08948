package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The commands of the story in the docs, from the bench to walking. */
public final class Story {
  static final Path PAGE = Path.of("sample-recordings/story/README.md");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final Pattern ADDS =
      Pattern.compile("(record (start|add)|check) .*--records records .*");

  private Story() {}

  /** All of them, in order. */
  static List<String> commands() throws IOException {
    return Files.readString(PAGE)
        .lines()
        .filter(line -> line.startsWith("./caryatid "))
        .map(line -> line.substring("./caryatid ".length()))
        .toList();
  }

  /** A command's words; what it writes goes to a folder. */
  static String[] words(String command, Path folder) {
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

  /** Makes the story's record, {@code K7-right}, in the folder {@code records} of a folder. */
  public static void make(Path folder) throws IOException {
    for (String command : commands()) {
      if (ADDS.matcher(command + " ").matches()) {
        Run run = Run.caryatid(words(command, folder));
        assertThat(run.code()).as(command + "\n" + run.err()).isZero();
      }
    }
  }
}
