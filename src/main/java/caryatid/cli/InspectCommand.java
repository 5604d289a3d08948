package caryatid.cli;

import caryatid.recording.model.Inspection;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.file.Output;
import caryatid.usecase.inspect.Inspect;
import caryatid.wording.InspectionText;
import caryatid.wording.Wording;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows what is understood of an export, and what has to be known before it can be used. */
@Command(
    name = "inspect",
    mixinStandardHelpOptions = true,
    description = "Shows what is understood of a plate's export, and asks what is not.")
final class InspectCommand implements Callable<Integer> {
  @Parameters(paramLabel = "RECORDING", description = "The plate's export.")
  private Path recording;

  @Option(
      names = "--plate",
      paramLabel = "DESCRIPTION",
      description = "A plate description (YAML) to read the file with.")
  private Path description;

  @Option(
      names = "--write",
      paramLabel = "FILE",
      description = "Write a plate description of what is known, with open questions marked.")
  private Path draft;

  @Option(names = "--replace", description = "Replace the file of --write if it already exists.")
  private boolean replace;

  @Mixin private ReaderLanguage language;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput, StoreFailure {
    Optional<Output> file = Optional.ofNullable(draft).map(p -> new Output(p, replace));
    if (file.isPresent()) {
      CaryatidCommand.FILES.requireFree(file.get());
    }
    Wording wording = language.wording();
    NamedBytes export = CaryatidCommand.FILES.read(recording);
    Inspection inspection = inspection(export);
    PrintWriter out = spec.commandLine().getOut();
    InspectionText.lines(inspection, description != null, wording).forEach(out::println);
    Inspect.landmarks(inspection, wording).forEach(out::println);
    if (file.isPresent()) {
      CaryatidCommand.FILES.write(file.get(), Inspect.draft(export, inspection, wording));
      out.println(wording.fill("InspectionText.written", Argument.text(draft.toString())));
    }
    return inspection.problems().isEmpty() ? 0 : 1;
  }

  private Inspection inspection(NamedBytes export) throws BadInput {
    return Inspect.run(
        export,
        description == null
            ? Optional.empty()
            : Optional.of(CaryatidCommand.FILES.read(description)));
  }
}
