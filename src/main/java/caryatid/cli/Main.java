package caryatid.cli;

import caryatid.wording.Wording;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Help;

/** Starts the program. */
public final class Main {
  private Main() {}

  /** Runs one command and ends with its exit code. */
  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int code = run(out, err, args);
    ClassArchive.reportRefused();
    System.exit(code);
  }

  /**
   * Runs one command.
   *
   * @param out where results go
   * @param err where problems go
   * @return 0 done, whatever the verdict; 1 could not be done; 2 wrong usage
   */
  public static int run(PrintWriter out, PrintWriter err, String... args) {
    return run(Clock.system(ZoneId.systemDefault()), out, err, args);
  }

  /**
   * Runs one command at a time of its own.
   *
   * @param clock what time it is
   * @param given where results go, with what could act on a terminal replaced
   * @param complaints where problems go, likewise
   */
  public static int run(Clock clock, PrintWriter given, PrintWriter complaints, String... args) {
    PrintWriter out = TerminalSanitiser.to(given);
    PrintWriter err = TerminalSanitiser.to(complaints);
    Wording wording = ReaderLanguage.typed(args);
    CommandLine program =
        CaryatidCommand.readyFor(clock, args)
            .setOut(out)
            .setErr(err)
            .setExecutionExceptionHandler(new Failures(wording))
            .setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF))
            .setCaseInsensitiveEnumValuesAllowed(true);
    int code = 1;
    try {
      code = program.execute(args);
    } catch (OutOfMemoryError e) {
      err.println(wording.word("cli.outOfMemory"));
    } catch (StackOverflowError | LinkageError | AssertionError e) {
      err.println(Failures.keep(e, wording));
    }
    out.flush();
    err.flush();
    return code;
  }

  /** The archive of classes with which the launcher starts Java. */
  private static final class ClassArchive {
    private ClassArchive() {}

    /**
     * Leaves a mark for the launcher when Java refused the archive, which it does without a word:
     * the next start makes it again. The launcher names the mark; started otherwise, there is none.
     */
    static void reportRefused() {
      Optional.ofNullable(System.getProperty("caryatid.refused"))
          .filter(mark -> !System.getProperty("java.vm.info", "").contains("sharing"))
          .ifPresent(mark -> leave(Path.of(mark)));
    }

    private static void leave(Path mark) {
      try {
        Files.createFile(mark);
      } catch (FileAlreadyExistsException left) {
        // By another start.
      } catch (IOException notOurs) {
        // A folder that we may not write to: all works without the archive, only more slowly.
      }
    }
  }
}
