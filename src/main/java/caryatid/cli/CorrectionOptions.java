package caryatid.cli;

import caryatid.entry.Entry;
import caryatid.wording.Wording;
import java.time.OffsetDateTime;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** The options that make an entry replace an earlier one. */
final class CorrectionOptions {
  @Option(
      names = "--corrects",
      paramLabel = "ENTRY",
      description = "The entry to replace; it stays in the record.")
  private Integer number;

  @Option(names = "--because", paramLabel = "WHY", description = "What was wrong with it.")
  private String why;

  @Option(
      names = "--as-of",
      paramLabel = "TIME",
      description =
          "The time from which the correction counts; that of the entry it corrects if left out.")
  private OffsetDateTime asOf;

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  /**
   * The correction, if there is one. A correction needs both the entry to replace and the reason.
   */
  Optional<Entry.Correction> correction(Wording wording) {
    if (number == null && why == null && asOf == null) {
      return Optional.empty();
    }
    if (number == null || why == null || why.isBlank()) {
      throw new ParameterException(spec.commandLine(), wording.word("cli.correctsAndBecause"));
    }
    return Optional.of(new Entry.Correction(number, why, Optional.ofNullable(asOf)));
  }
}
