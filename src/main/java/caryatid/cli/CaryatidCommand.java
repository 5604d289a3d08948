package caryatid.cli;

import caryatid.workflow.Program;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
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

  private final Clock clock;

  CaryatidCommand(Clock clock) {
    this.clock = clock;
  }

  /** The time now, to the second, for any command. */
  static OffsetDateTime now(CommandSpec command) {
    Clock clock = ((CaryatidCommand) command.root().userObject()).clock;
    return OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS);
  }

  @Override
  public void run() {
    throw new CommandLine.ParameterException(spec.commandLine(), "Which command?");
  }
}
