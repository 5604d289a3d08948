package caryatid.cli;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.Records;
import caryatid.usecase.RememberedPlates;
import caryatid.usecase.file.Output;
import caryatid.usecase.prove.ProvePlate;
import caryatid.wording.ProofText;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What can be done with a plate; its work is in the command below it. */
@Command(
    name = "plate",
    mixinStandardHelpOptions = true,
    description = "Proves what a plate description says.",
    subcommands = PlateCommand.Prove.class)
final class PlateCommand extends CommandGroup {
  /** Proves a description. */
  @Command(
      name = "prove",
      mixinStandardHelpOptions = true,
      description =
          "Proves a plate description by recordings of a known weight on marked places and of a"
              + " person who moves as asked, and measures how well the plate's numbers are known.")
  static final class Prove extends RecordSubcommand {
    @Parameters(index = "0", paramLabel = "DESCRIPTION", description = "The plate description.")
    private Path description;

    @Parameters(
        index = "1",
        paramLabel = "SHEET",
        description = "What was done (YAML): plate-proof: 1. Its recordings lie beside it.")
    private Path sheet;

    @Option(
        names = "--write",
        paramLabel = "FILE",
        description = "Write the description with its proof; check takes it with --plate.")
    private Path file;

    @Option(names = "--replace", description = "Replace the file of --write if it already exists.")
    private boolean replace;

    @Override
    int run(Records records) throws BadInput, StoreFailure {
      Optional<Output> output = Optional.ofNullable(file).map(path -> new Output(path, replace));
      if (output.isPresent()) {
        CaryatidCommand.FILES.requireFree(output.get());
      }
      NamedBytes plate = CaryatidCommand.FILES.read(description);
      ProvePlate.Proven proven =
          ProvePlate.run(plate, CaryatidCommand.FILES.read(sheet), this::beside);
      print(ProofText.lines(proven.proof(), wording()));
      if (output.isPresent()) {
        CaryatidCommand.FILES.write(output.get(), proven.description());
        say("cli.proofWritten", file);
      }
      int known = RememberedPlates.proven(records, proven.description());
      if (known > 0) {
        say("cli.proofRemembered");
      }
      return 0;
    }

    private Optional<NamedBytes> beside(String name) {
      try {
        return CaryatidCommand.FILES.find(sheet.resolveSibling(name));
      } catch (InvalidPathException e) {
        return Optional.empty();
      }
    }
  }
}
