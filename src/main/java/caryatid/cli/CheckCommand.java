package caryatid.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.format.ResultDifference;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.remark.Topic;
import caryatid.usecase.AddedEntry;
import caryatid.usecase.Check;
import caryatid.usecase.Inputs;
import caryatid.usecase.KeepStand;
import caryatid.usecase.Recheck;
import caryatid.usecase.RecheckResult;
import caryatid.usecase.SessionCheck;
import caryatid.usecase.StandReport;
import caryatid.wording.ResultText;
import caryatid.wording.Wording;
import java.io.PrintWriter;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * The main command: where the load line runs, compared with what is recommended, and the report.
 */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Checks the load line of a standing trial and writes the report.")
final class CheckCommand implements Callable<Integer> {
  /** Differences listed at the most: where one value differs, many that follow from it do. */
  static final int MOST = 10;

  /** What the clinic measured of its own hands, in a sheet. */
  private static final Pattern MEASURED = Pattern.compile("(?m)^measured: .*\n");

  @Mixin private TrialOptions trial;
  @Mixin private ReportOptions report;

  @Option(
      names = "--json",
      description = "Print the whole result for programs, and write no report.")
  private boolean json;

  @Mixin private ReaderLanguage language;

  @Mixin private KeepOptions keep;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput, StoreFailure {
    PrintWriter out = spec.commandLine().getOut();
    if (trial.isReport()) {
      return checkAgain(out);
    }
    Inputs given = trial.inputs(language.wording());
    Inputs ofClinic = keep.completed(given, spec);
    PrintWriter remarks = json ? spec.commandLine().getErr() : out;
    Wording wording = language.wording();
    used(given, ofClinic, wording, remarks);
    Optional<KeepStand> kept = keep.keep(spec, wording);
    Inputs inputs = kept.isPresent() ? ofRecord(ofClinic, kept.get(), wording, remarks) : ofClinic;
    SessionCheck session = keep.session(each -> checked(each, kept), spec);
    if (json) {
      return json(inputs, session, kept, wording);
    }
    StandReport.Order order = report.order(trial.first());
    StandReport.requireFree(order, CaryatidCommand.FILES);
    SessionCheck.Answered answered =
        new TerminalQuestions(TerminalPrompt.atTerminal(wording, System.console()), wording)
            .answered(inputs, session);
    remembered(answered, wording, out);
    inputs = answered.inputs();
    Check.Checked checked = answered.checked();
    ResultText.lines(checked.result(), wording)
        .forEach(line -> out.println(TerminalText.single(line)));
    StandReport.write(
        order,
        inputs,
        checked,
        wording,
        CaryatidCommand.FILES,
        path -> out.println(wording.fill("cli.report", Argument.text(path.toString()))));
    keep(inputs, checked, kept, wording, out);
    return 0;
  }

  private int json(Inputs inputs, SessionCheck session, Optional<KeepStand> kept, Wording wording)
      throws BadInput, StoreFailure {
    PrintWriter err = spec.commandLine().getErr();
    SessionCheck.Answered answered = session.run(inputs);
    remembered(answered, wording, err);
    byte[] result = StandReport.json(answered.checked().result());
    spec.commandLine().getOut().println(TerminalText.json(new String(result, UTF_8)));
    keep(answered.inputs(), answered.checked(), kept, wording, err);
    return 0;
  }

  private static void used(Inputs given, Inputs inputs, Wording wording, PrintWriter to)
      throws BadInput {
    if (given.description().isEmpty()) {
      inputs
          .description()
          .map(plate -> wording.fill("cli.plateUsed", Argument.text(plate.name())))
          .ifPresent(to::println);
    }
    String before = new String(given.sheet().readAll(), UTF_8);
    String after = new String(inputs.sheet().readAll(), UTF_8);
    String unmeasured = MEASURED.matcher(after).replaceFirst("");
    if (!unmeasured.equals(after) && !MEASURED.matcher(before).find()) {
      to.println(wording.word("cli.handsUsed"));
      after = unmeasured;
    }
    if (!after.strip().equals(before.strip())) {
      to.println(wording.word("cli.limitsUsed"));
    }
  }

  private static Inputs ofRecord(Inputs given, KeepStand kept, Wording wording, PrintWriter to)
      throws BadInput {
    Inputs inputs = kept.completed(given);
    if (inputs.sheet() != given.sheet()) {
      to.println(wording.word("cli.componentsUsed"));
    }
    if (!inputs.earlier().equals(given.earlier())) {
      to.println(wording.word("cli.earlierUsed"));
    }
    return inputs;
  }

  private static void remembered(SessionCheck.Answered answered, Wording wording, PrintWriter to) {
    if (!answered.before().isEmpty()) {
      Argument answers = Argument.text(String.join("; ", answered.before()));
      to.println(TerminalText.line(wording.fill("cli.answeredBefore", answers)));
    }
    answered.notRemembered().forEach(why -> to.println(TerminalText.line(wording.say(why))));
  }

  private Check.Checked checked(Inputs inputs, Optional<KeepStand> kept)
      throws BadInput, StoreFailure {
    return kept.isPresent()
        ? kept.get().check(inputs)
        : Check.run(inputs, OffsetDateTime.now(CaryatidCommand.clock(spec)));
  }

  private void keep(
      Inputs inputs,
      Check.Checked checked,
      Optional<KeepStand> kept,
      Wording wording,
      PrintWriter to)
      throws BadInput, StoreFailure {
    if (kept.isPresent()) {
      AddedEntry added = kept.get().keep(inputs, checked, wording, report.paper());
      keep.lines(added, wording).forEach(to::println);
    }
  }

  private int checkAgain(PrintWriter out) throws BadInput {
    String name = trial.first().toString();
    Wording wording = language.wording();
    RecheckText text = new RecheckText(wording);
    RecheckResult outcome = Recheck.run(name, CaryatidCommand.FILES.read(trial.first()).readAll());
    if (outcome instanceof RecheckResult.Newer newer) {
      return failed(List.of(newer.problem()), wording);
    }
    if (outcome instanceof RecheckResult.Altered altered) {
      List<Problem> problems = new ArrayList<>(altered.elsewhere());
      altered.differences().stream().limit(MOST).forEach(d -> problems.add(different(name, d)));
      return failed(problems, wording);
    }
    if (outcome instanceof RecheckResult.PagesDiffer differ) {
      text.lines(differ.result()).forEach(out::println);
      return failed(List.of(different(name, differ)), wording);
    }
    List<String> lines =
        outcome instanceof RecheckResult.Older older
            ? text.lines(older)
            : text.lines((RecheckResult.Reproduced) outcome);
    lines.forEach(out::println);
    return 0;
  }

  private int failed(List<Problem> problems, Wording wording) {
    problems.forEach(p -> spec.commandLine().getErr().println(TerminalText.line(wording.say(p))));
    return 1;
  }

  private static Problem different(String name, ResultDifference difference) {
    return Problem.at(
        Place.of(name),
        CliProblem.NOT_REPRODUCED,
        Argument.text(difference.path()),
        Argument.text(difference.before()),
        Argument.text(difference.now()));
  }

  private static Problem different(String name, RecheckResult.PagesDiffer differ) {
    String pages = differ.pages().stream().map(String::valueOf).collect(Collectors.joining(", "));
    return Problem.at(
        Place.of(name),
        CliProblem.PAGES_DIFFER,
        Argument.text(differ.madeBy()),
        Argument.text(pages));
  }

  /** What can go wrong at the command line. */
  private enum CliProblem implements Topic {
    /** Arguments: what made the report, the numbers of the pages. */
    PAGES_DIFFER("Cli.PAGES_DIFFER"),
    NOT_REPRODUCED("Cli.NOT_REPRODUCED");

    private final String code;

    CliProblem(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }
}
