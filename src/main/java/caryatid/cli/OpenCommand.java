package caryatid.cli;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.usecase.Records;
import caryatid.web.Window;
import caryatid.wording.Wording;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Opens the window: the fitting in a page of one's own browser. */
@Command(
    name = "open",
    mixinStandardHelpOptions = true,
    description =
        "Opens the window: the fitting in a page of your own browser, served to this computer"
            + " alone. Ends with Ctrl-C, or from the page.")
final class OpenCommand implements Callable<Integer> {
  /** Where start files lie, unless it is said otherwise. */
  static final String FOLDER = "caryatid.windows";

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "0",
      description = "The port on this computer; any that is free if left out.")
  private int port;

  @Option(
      names = "--no-browser",
      description = "Open no browser; the start file to open is still printed.")
  private boolean noBrowser;

  @Mixin private RecordsFolder records;

  @Mixin private ReaderLanguage language;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput, InterruptedException {
    Wording wording = language.wording();
    Records opened = records.open(spec, wording);
    Window.Setting setting =
        new Window.Setting(
            opened,
            port,
            folder(),
            CaryatidCommand.clock(spec),
            failure -> Failures.keep(failure, wording));
    try {
      Optional<Window> window = Window.open(setting);
      if (window.isPresent()) {
        serve(window.get(), wording);
      } else {
        say(wording, "cli.openAlready", opened.folder().toString());
        browse(Window.startFile(folder(), opened.folder()));
      }
      return 0;
    } catch (FileSystemException e) {
      return refuse(
          wording, "cli.folderNotOpened", Argument.text(folder().toString()), Argument.why(e));
    } catch (IOException e) {
      return refuse(wording, "cli.notOpened", Argument.why(e));
    }
  }

  private int refuse(Wording wording, String key, Argument... arguments) {
    spec.commandLine().getErr().println(wording.fill(key, arguments));
    return 1;
  }

  private void serve(Window window, Wording wording) throws IOException, InterruptedException {
    Thread atExit = new Thread(() -> end(window));
    Runtime.getRuntime().addShutdownHook(atExit);
    try (window) {
      say(wording, "cli.opened", window.address(), window.startFile().toString());
      browse(window.startFile());
      window.awaitEnd();
    } finally {
      removeHook(atExit);
    }
  }

  private static void end(Window window) {
    try {
      window.close();
    } catch (IOException e) {
      // The next start meets what is left.
    }
  }

  private static void removeHook(Thread atExit) {
    try {
      Runtime.getRuntime().removeShutdownHook(atExit);
    } catch (IllegalStateException ending) {
      // The program is ending, and the hook with it.
    }
  }

  private void say(Wording wording, String key, String... arguments) {
    PrintWriter out = spec.commandLine().getOut();
    out.println(wording.fill(key, Arrays.stream(arguments).map(Argument::text).toList()));
    out.flush();
  }

  static Path folder() {
    return Optional.ofNullable(System.getProperty(FOLDER))
        .map(Path::of)
        .orElseGet(() -> Path.of(System.getProperty("user.home"), ".caryatid", "windows"));
  }

  /** By the system's own opener: what Java has for it needs a desktop of its own. */
  private void browse(Path file) {
    if (noBrowser) {
      return;
    }
    String system = System.getProperty("os.name");
    List<String> command =
        system.startsWith("Windows")
            ? List.of("rundll32", "url.dll,FileProtocolHandler", file.toString())
            : List.of(system.startsWith("Mac") ? "open" : "xdg-open", file.toString());
    try {
      new ProcessBuilder(command)
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException e) {
      say(language.wording(), "cli.noBrowser", file.toString());
    }
  }
}
