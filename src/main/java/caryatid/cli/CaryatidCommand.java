package caryatid.cli;

import caryatid.remark.Argument;
import caryatid.usecase.Program;
import caryatid.usecase.file.FileAccess;
import caryatid.usecase.file.LocalFiles;
import caryatid.wording.Wording;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** The program itself; its work is in the commands below it. */
@Command(
    name = "caryatid",
    mixinStandardHelpOptions = true,
    version = Program.NAME,
    description = "Where the load line of a standing prosthesis wearer runs, and how sure that is.")
final class CaryatidCommand implements Runnable {
  /** What the commands read and write. */
  static final FileAccess FILES = new LocalFiles();

  private static final Map<String, Class<?>> COMMANDS = new LinkedHashMap<>();

  static {
    COMMANDS.put("check", CheckCommand.class);
    COMMANDS.put("inspect", InspectCommand.class);
    COMMANDS.put("record", RecordCommand.class);
    COMMANDS.put("clinic", ClinicCommand.class);
  }

  @Spec private CommandSpec spec;

  private final Clock clock;

  CaryatidCommand(Clock clock) {
    this.clock = clock;
  }

  /**
   * The program with the command that the arguments name, and with all where they name none: to set
   * up a command takes longer than some need to run.
   */
  static CommandLine readyFor(Clock clock, String... args) {
    CommandLine program = new CommandLine(new CaryatidCommand(clock));
    if (args.length > 0 && COMMANDS.containsKey(args[0])) {
      program.addSubcommand(COMMANDS.get(args[0]));
    } else {
      COMMANDS.values().forEach(program::addSubcommand);
    }
    program.registerConverter(Path.class, new TypedPath());
    return program;
  }

  /** What time it is, for any command. */
  static Clock clock(CommandSpec command) {
    return ((CaryatidCommand) command.root().userObject()).clock;
  }

  @Override
  public void run() {
    throw new CommandLine.ParameterException(spec.commandLine(), "Which command?");
  }

  /**
   * The path somebody typed. A class, because Java 17 crashes where it makes the archive of classes
   * with which the launcher starts it, if a reference to a method stands here.
   */
  private static final class TypedPath implements ITypeConverter<Path> {
    @Override
    public Path convert(String typed) {
      try {
        return Path.of(typed);
      } catch (InvalidPathException e) {
        throw new TypeConversionException(
            Wording.in(Locale.ENGLISH).fill("cli.badPath", Argument.text(typed)));
      }
    }
  }
}
