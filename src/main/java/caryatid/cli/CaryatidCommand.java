package caryatid.cli;

import caryatid.workflow.Program;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program itself; its work is in the commands below it. */
@Command(
    name = "caryatid",
    mixinStandardHelpOptions = true,
    version = Program.NAME,
    description = "Where the load line of a standing prosthesis wearer runs, and how sure that is.",
    subcommands = {CheckCommand.class, InspectCommand.class, RecordCommand.class})
final class CaryatidCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new CommandLine.ParameterException(spec.commandLine(), "Which command?");
  }
}
