package caryatid.cli;

import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** The one place where a failure becomes a message and an exit code. */
final class Failures implements IExecutionExceptionHandler {
  @Override
  public int handleExecutionException(Exception failure, CommandLine command, ParseResult parsed)
      throws Exception {
    if (failure instanceof CommandLine.ParameterException) {
      throw failure;
    }
    Wording wording = Wording.in(Locale.ENGLISH);
    problems(failure)
        .forEach(problem -> command.getErr().println(TerminalText.line(wording.say(problem))));
    return 1;
  }

  private static List<Problem> problems(Exception failure) throws Exception {
    if (failure instanceof BadInput bad) {
      return bad.problems();
    }
    if (failure instanceof StoreFailure store) {
      return store.problems();
    }
    throw failure;
  }
}
