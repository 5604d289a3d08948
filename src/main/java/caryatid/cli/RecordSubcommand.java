package caryatid.cli;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.usecase.Records;
import caryatid.wording.Wording;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What all commands of the fitting record share: the folder, the language, where to print. */
abstract class RecordSubcommand implements Callable<Integer> {
  static final String BY = "Initials of who does it; asked for at a terminal if left out.";

  @Mixin private ReaderLanguage language;

  @Mixin private RecordsFolder records;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput, StoreFailure {
    return run(records.open(spec, wording()));
  }

  abstract int run(Records records) throws BadInput, StoreFailure;

  Wording wording() {
    return language.wording();
  }

  PrintWriter out() {
    return spec.commandLine().getOut();
  }

  void say(String key, Object... arguments) {
    out().println(wording().fill(key, texts(arguments)));
  }

  /** Prints lines in which there may be what people wrote. */
  void print(List<String> lines) {
    lines.forEach(line -> out().println(TerminalText.line(line)));
  }

  /** Ends a command that has shown the undamaged parts: fails with the damage, if there is any. */
  static int sound(List<Problem> damage) throws BadInput {
    if (damage.isEmpty()) {
      return 0;
    }
    throw new BadInput(damage);
  }

  static Argument[] texts(Object... arguments) {
    return Stream.of(arguments).map(a -> Argument.text(a.toString())).toArray(Argument[]::new);
  }
}
