package caryatid.cli;

import caryatid.remark.BadInput;
import caryatid.wording.Wording;
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
    if (!(failure instanceof BadInput bad)) {
      throw failure;
    }
    Wording wording = Wording.in(Locale.ENGLISH);
    bad.problems().forEach(problem -> command.getErr().println(Shown.line(wording.say(problem))));
    return 1;
  }
}
