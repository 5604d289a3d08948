package caryatid.cli;

import caryatid.wording.Language;
import caryatid.wording.Wording;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The language of what is shown; the same option for every command. */
final class ReaderLanguage {
  private static final String NAME = "--language";

  @Option(
      names = NAME,
      paramLabel = "CODE",
      defaultValue = "en",
      description = "Language of text and report: en, de, fr or es; en if left out.")
  private Language language;

  /** The sentences in the chosen language. */
  Wording wording() {
    return Wording.in(language.locale());
  }

  /**
   * The sentences in the language that the arguments name, for what is said before they are
   * understood or outside any command; English if they name none.
   */
  static Wording typed(String... args) {
    Language chosen = Language.EN;
    for (int i = 0; i < args.length; i++) {
      if (args[i].startsWith(NAME + "=")) {
        chosen = named(args[i].substring(NAME.length() + 1)).orElse(chosen);
      } else if (args[i].equals(NAME) && i + 1 < args.length) {
        chosen = named(args[i + 1]).orElse(chosen);
      }
    }
    return Wording.in(chosen.locale());
  }

  private static Optional<Language> named(String tag) {
    return Arrays.stream(Language.values())
        .filter(language -> language.tag().equals(tag.toLowerCase(Locale.ROOT)))
        .findFirst();
  }
}
