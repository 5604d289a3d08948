package caryatid.cli;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.usecase.file.Output;
import caryatid.wording.Wording;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/**
 * The one place where a failure becomes a message and an exit code. One that nobody foresaw is told
 * in one sentence and kept in a file to be sent. The file says where in the program it happened,
 * and nothing that was read or typed: messages of exceptions may quote a file, so they are left
 * out.
 */
final class Failures implements IExecutionExceptionHandler {
  /** Where the file goes, unless it is said otherwise. */
  static final String FOLDER = "caryatid.failures";

  private static final int MOST_CAUSES = 10;

  private final Wording wording;

  /** Failures in the language of the reader. */
  Failures(Wording wording) {
    this.wording = wording;
  }

  @Override
  public int handleExecutionException(Exception failure, CommandLine command, ParseResult parsed)
      throws Exception {
    if (failure instanceof CommandLine.ParameterException) {
      throw failure;
    }
    List<Problem> problems = problems(failure);
    if (problems.isEmpty()) {
      command.getErr().println(keep(failure, wording));
    }
    problems.forEach(problem -> command.getErr().println(TerminalText.line(wording.say(problem))));
    return 1;
  }

  private static List<Problem> problems(Exception failure) {
    if (failure instanceof BadInput bad) {
      return bad.problems();
    }
    return failure instanceof StoreFailure store ? store.problems() : List.of();
  }

  /** Keeps the failure for its owner alone, and gives the sentence to be said. */
  static String keep(Throwable failure, Wording wording) {
    Path file = folder().resolve("failure-" + UUID.randomUUID() + ".txt");
    try {
      CaryatidCommand.FILES.write(
          new Output(file, false),
          String.join("\n", lines(failure)).getBytes(StandardCharsets.UTF_8));
      return wording.fill("cli.unforeseen", Argument.text(file.toString()));
    } catch (BadInput | StoreFailure e) {
      return wording.fill("cli.unforeseenUnkept", Argument.text(failure.getClass().getName()));
    }
  }

  private static Path folder() {
    return Optional.ofNullable(System.getProperty(FOLDER))
        .map(Path::of)
        .orElseGet(() -> Path.of(System.getProperty("user.home"), ".caryatid", "failures"));
  }

  private static List<String> lines(Throwable failure) {
    List<String> lines = new ArrayList<>();
    for (String about : List.of("java.version", "java.vendor", "os.name", "os.arch")) {
      lines.add(about + " " + System.getProperty(about));
    }
    Optional<Throwable> cause = Optional.of(failure);
    for (int i = 0; i < MOST_CAUSES && cause.isPresent(); i++) {
      lines.add(cause.get().getClass().getName());
      for (StackTraceElement frame : cause.get().getStackTrace()) {
        lines.add("  " + frame);
      }
      cause = cause.map(Throwable::getCause);
    }
    lines.add("");
    return lines;
  }
}
