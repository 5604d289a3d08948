package caryatid.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The fitting record; its work is in the commands below it. */
@Command(
    name = RecordCommand.NAME,
    mixinStandardHelpOptions = true,
    description = "Keeps the fitting record: one folder per prosthesis, from the bench to walking.")
final class RecordCommand implements Runnable {
  static final String NAME = "record";

  /** What one can do with a record, in the order the help names it. */
  static final List<Class<?>> COMMANDS =
      List.of(
          RecordListCommand.class,
          RecordStartCommand.class,
          RecordFormCommand.class,
          RecordAddCommand.class,
          RecordNextCommand.class,
          RecordShowCommand.class,
          RecordCompareCommand.class,
          RecordSinceCommand.class,
          RecordBackCommand.class,
          RecordReportCommand.class,
          RecordVerifyCommand.class,
          RecordPackCommand.class,
          RecordUnpackCommand.class,
          RecordBackupCommand.class,
          RecordRestoreCommand.class,
          RecordEraseCommand.class);

  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new CommandLine.ParameterException(spec.commandLine(), "Which command?");
  }
}
