package caryatid.cli;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.report.pages.Paper;
import caryatid.usecase.batch.Batch;
import caryatid.usecase.batch.BatchOutcome;
import caryatid.usecase.batch.BatchState;
import caryatid.wording.Wording;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks every state in folders, and writes one table of what was found. */
@Command(
    name = "batch",
    mixinStandardHelpOptions = true,
    description = "Checks every standing trial in folders, and writes one table of the findings.")
final class BatchCommand implements Callable<Integer> {
  @Parameters(
      arity = "0..*",
      paramLabel = "FOLDER",
      description =
          "Folders with trial sheets, exports of the same names, and the plate description.")
  private List<Path> folders = new ArrayList<>();

  @Option(
      names = "--list",
      paramLabel = "FILE",
      description =
          "A list (CSV) with the columns state, recording, sheet and plate, one row per stand;"
              + " instead of folders or as well.")
  private List<Path> lists = new ArrayList<>();

  @Option(
      names = "--plate",
      paramLabel = "DESCRIPTION",
      description = "The plate description (YAML) for all; if left out, the one beside each sheet.")
  private Path plate;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      required = true,
      description = "Where the table goes: a new folder, or that of an earlier run, to go on.")
  private Path out;

  @Option(names = "--reports", description = "Write the report (PDF) of each state as well.")
  private boolean reports;

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      defaultValue = "A4",
      description = "Paper of the reports: A4 or Letter.")
  private Paper paper;

  @Option(
      names = "--words",
      description = "Also write what people wrote in their own words into the table.")
  private boolean words;

  @Option(
      names = "--at-a-time",
      paramLabel = "N",
      description = "How many are checked at a time; one for each processor if left out.")
  private int atATime = Runtime.getRuntime().availableProcessors();

  @Mixin private ReaderLanguage language;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput, StoreFailure {
    if (folders.isEmpty() && lists.isEmpty()) {
      throw new ParameterException(spec.commandLine(), "Missing: a FOLDER, or --list=FILE");
    }
    if (atATime < 1) {
      throw new ParameterException(spec.commandLine(), "--at-a-time must be 1 or more");
    }
    Wording wording = language.wording();
    Clock clock = CaryatidCommand.clock(spec);
    List<BatchState> states =
        Batch.states(folders, lists, out, Optional.ofNullable(plate), CaryatidCommand.FILES);
    Progress progress = new Progress(states.size(), clock, spec.commandLine().getOut(), wording);
    List<BatchOutcome> outcomes =
        Batch.run(
            states,
            new Batch.BatchOrder(out, reports, paper, words, atATime),
            CaryatidCommand.FILES,
            wording,
            OffsetDateTime.now(clock),
            progress::done);
    progress.end(out, Batch.others(out, states));
    return outcomes.stream().anyMatch(BatchOutcome::isRefused) ? 1 : 0;
  }

  /** A line for each state: how far it is, and how long the rest will take at this rate. */
  private static final class Progress {
    private final int all;
    private final Clock clock;
    private final PrintWriter out;
    private final Wording wording;
    private final long begun;
    private final Map<String, Integer> reasons = new LinkedHashMap<>();
    private int done;
    private int refused;
    private int before;

    Progress(int all, Clock clock, PrintWriter out, Wording wording) {
      this.all = all;
      this.clock = clock;
      this.out = out;
      this.wording = wording;
      this.begun = clock.millis();
    }

    void done(BatchOutcome outcome) {
      done++;
      refused += outcome.isRefused() ? 1 : 0;
      before += outcome.before() ? 1 : 0;
      String what = outcome.isRefused() ? "cli.batchRefused" : "cli.batchDone";
      double seconds = (clock.millis() - begun) / 1000.0;
      out.println(
          TerminalText.line(
              wording.fill(
                  what,
                  Argument.count(done),
                  Argument.count(all),
                  Argument.text(outcome.state()),
                  Argument.count(Math.round(seconds / done * (all - done))))));
      outcome.unsafe().forEach(line -> out.println(TerminalText.line("  ! " + line)));
      for (Problem problem : outcome.problems()) {
        if (reasons.merge(wording.sayWithin(problem), 1, Integer::sum) == 1) {
          out.println(TerminalText.line("  " + wording.say(problem)));
        }
      }
      out.flush();
    }

    /** A reason of several states is given once more, with their number. */
    private void repeated() {
      reasons.forEach(
          (reason, states) -> {
            if (states > 1) {
              Argument count = Argument.count(states);
              out.println(
                  TerminalText.line(wording.fill("cli.batchSame", count, Argument.text(reason))));
            }
          });
    }

    void end(Path folder, int others) {
      repeated();
      out.println(
          TerminalText.line(
              wording.fill(
                  "cli.batchEnd",
                  Argument.count(done - refused),
                  Argument.count(all),
                  Argument.count(before),
                  Argument.text(folder.toString()))));
      if (others > 0) {
        out.println(wording.fill("cli.batchOthers", Argument.count(others)));
      }
    }
  }
}
