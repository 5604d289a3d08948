package caryatid.cli;

import caryatid.remark.Argument;
import caryatid.usecase.Program;
import caryatid.usecase.file.FileAccess;
import caryatid.usecase.file.LocalFiles;
import caryatid.wording.Wording;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.TypeConversionException;

/** The program itself; its work is in the commands below it. */
@Command(
    name = "caryatid",
    mixinStandardHelpOptions = true,
    version = Program.NAME,
    description =
        "Where the load line of a standing prosthesis wearer runs, and how certain that is.")
final class CaryatidCommand extends CommandGroup {
  /** What the commands read and write. */
  static final FileAccess FILES = new LocalFiles();

  private static final Set<String> VERSION = Set.of("--version", "-V");
  private static final List<Class<?>> COMMANDS =
      List.of(
          CheckCommand.class,
          InspectCommand.class,
          BatchCommand.class,
          RecordCommand.class,
          ClinicCommand.class,
          PlateCommand.class,
          OpenCommand.class,
          CompletionCommand.class);

  private final Clock clock;

  CaryatidCommand(Clock clock) {
    this.clock = clock;
  }

  /**
   * The program with the command that the arguments name, with none where they ask for the version
   * alone, else with all: to set up a command takes longer than some need to run.
   */
  static CommandLine readyFor(Clock clock, String... args) {
    CommandLine program = new CommandLine(new CaryatidCommand(clock));
    if (args.length != 1 || !VERSION.contains(args[0])) {
      add(program, COMMANDS, args, 0);
    }
    CommandLine record = program.getSubcommands().get(RecordCommand.NAME);
    if (record != null) {
      add(record, RecordCommand.COMMANDS, args, 1);
    }
    Wording wording = ReaderLanguage.typed(args);
    program.registerConverter(Path.class, new TypedPath(wording));
    program.registerConverter(OffsetDateTime.class, new Converters.ToTime(wording));
    return program;
  }

  /** Adds the command that the argument at this place names, and all where it names none. */
  private static void add(CommandLine parent, List<Class<?>> commands, String[] args, int place) {
    String typed = args.length > place ? args[place] : "";
    List<Class<?>> named = commands.stream().filter(one -> nameOf(one).equals(typed)).toList();
    (named.isEmpty() ? commands : named).forEach(parent::addSubcommand);
  }

  private static String nameOf(Class<?> command) {
    return command.getAnnotation(Command.class).name();
  }

  /** What time it is, for any command. */
  static Clock clock(CommandSpec command) {
    return ((CaryatidCommand) command.root().userObject()).clock;
  }

  /**
   * The path somebody typed. A class, because Java 17 crashes where it makes the archive of classes
   * with which the launcher starts it, if a reference to a method stands here.
   */
  private static final class TypedPath implements ITypeConverter<Path> {
    private final Wording wording;

    TypedPath(Wording wording) {
      this.wording = wording;
    }

    @Override
    public Path convert(String typed) {
      try {
        return Path.of(typed);
      } catch (InvalidPathException e) {
        throw new TypeConversionException(wording.fill("cli.badPath", Argument.text(typed)));
      }
    }
  }
}
