package caryatid.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints the script with which a shell completes commands and options. */
@Command(
    name = "completion",
    mixinStandardHelpOptions = true,
    description =
        "Prints a script for bash or zsh that completes commands and options: source <(caryatid"
            + " completion)")
final class CompletionCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    String name = spec.root().name();
    spec.commandLine()
        .getOut()
        .print(AutoComplete.bash(name, CaryatidCommand.readyFor(CaryatidCommand.clock(spec))));
    return 0;
  }
}
